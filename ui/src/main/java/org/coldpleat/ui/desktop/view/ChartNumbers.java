package org.coldpleat.ui.desktop.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coldpleat.ui.chart.ShareGrid;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.general.DatasetUtils;
import org.jfree.data.xy.XYDataset;

/** The numbers of a chart as lines of a table and as a read-out. */
final class ChartNumbers {
    private ChartNumbers() {}

    /** Every known point of every curve. */
    static List<NumberRow> rows(JFreeChart chart) {
        List<NumberRow> rows = new ArrayList<>();
        for (XYPlot plot : panels(chart)) {
            XYDataset data = plot.getDataset();
            for (int s = 0; s < data.getSeriesCount(); s++) {
                for (int i = 0; i < data.getItemCount(s); i++) {
                    if (Double.isFinite(data.getYValue(s, i))) {
                        String name = name(chart, plot, s);
                        rows.add(new NumberRow(name, text(data.getXValue(s, i)), text(data.getYValue(s, i))));
                    }
                }
            }
        }
        return rows;
    }

    /** The panels of a chart; itself if it has one only. */
    private static List<XYPlot> panels(JFreeChart chart) {
        return chart.getPlot() instanceof CombinedDomainXYPlot all
                ? all.getSubplots().stream().map(XYPlot.class::cast).toList()
                : List.of((XYPlot) chart.getPlot());
    }

    /** Name of a curve; where there are several panels, with what it is a curve of. */
    private static String name(JFreeChart chart, XYPlot panel, int series) {
        String name = name(panel.getDataset(), series);
        return panels(chart).size() == 1
                ? name
                : WindowTexts.get("numbers.panel", name, panel.getRangeAxis().getLabel());
    }

    /** Every known point of a map: temperature [degC], speed [rev/s] or flow [m3/s], share [%]. */
    static List<NumberRow> rows(ShareGrid grid) {
        List<NumberRow> rows = new ArrayList<>();
        for (int d = 0; d < grid.drive().length; d++) {
            String drive = WindowTexts.get(
                    grid.engine() ? "numbers.speed" : "numbers.flow",
                    text(60 * (grid.engine() ? 1 : 1000) * grid.drive()[d]));
            for (int t = 0; t < grid.temperature().length; t++) {
                if (Double.isFinite(grid.share()[t][d])) {
                    rows.add(
                            new NumberRow(drive, text(grid.temperature()[t] - 273.15), text(100 * grid.share()[t][d])));
                }
            }
        }
        return rows;
    }

    /** Values of all curves at one place along the chart. */
    static String readOut(JFreeChart chart, double x) {
        StringBuilder words = new StringBuilder(WindowTexts.get("readout", text(x)));
        for (XYPlot plot : panels(chart)) {
            XYDataset data = plot.getDataset();
            for (int s = 0; s < data.getSeriesCount(); s++) {
                double y = DatasetUtils.findYValue(data, s, x);
                if (Double.isFinite(y)) {
                    words.append("   ").append(WindowTexts.get("readout.value", name(chart, plot, s), text(y)));
                }
            }
        }
        return words.toString();
    }

    /** Keys of curves begin with a number that keeps like names apart. */
    private static String name(XYDataset data, int series) {
        return data.getSeriesKey(series).toString().replaceFirst("^\\d+ ", "");
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
