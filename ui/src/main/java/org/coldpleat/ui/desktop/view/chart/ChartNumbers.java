package org.coldpleat.ui.desktop.view.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.general.DatasetUtils;
import org.jfree.data.xy.XYDataset;

/** The numbers of a chart as lines of a table and as a read-out. */
public final class ChartNumbers {
    private static final double NOUGHT = 1e-9;

    private ChartNumbers() {}

    /** Every known point of every curve. */
    public static List<NumberRow> rows(JFreeChart chart) {
        List<NumberRow> rows = new ArrayList<>();
        for (XYPlot plot : panels(chart)) {
            for (int d = 0; d < plot.getDatasetCount(); d++) {
                if (plot.getDataset(d) != null) {
                    add(rows, plot.getDataset(d), chart, plot);
                }
            }
        }
        return rows;
    }

    private static void add(List<NumberRow> rows, XYDataset data, JFreeChart chart, XYPlot plot) {
        for (int s = 0; s < data.getSeriesCount(); s++) {
            String name = name(data, s);
            String full = panels(chart).size() == 1
                    ? name
                    : WindowTexts.get("numbers.panel", name, plot.getRangeAxis().getLabel());
            for (int i = 0; i < data.getItemCount(s); i++) {
                if (Double.isFinite(data.getYValue(s, i))) {
                    rows.add(new NumberRow(full, text(data.getXValue(s, i)), text(data.getYValue(s, i))));
                }
            }
        }
    }

    /** What is told along a chart, with its unit. */
    static String along(JFreeChart chart) {
        return hasOneAxisAlong(chart)
                ? ((XYPlot) chart.getPlot()).getDomainAxis().getLabel()
                : WindowTexts.get("numbers.x");
    }

    /** False for panels side by side, each along an axis of its own. */
    static boolean hasOneAxisAlong(JFreeChart chart) {
        return !(chart.getPlot() instanceof CombinedRangeXYPlot);
    }

    /** What is told up a chart, with its unit; a general word where there are several panels. */
    static String across(JFreeChart chart) {
        List<XYPlot> panels = panels(chart);
        return panels.size() == 1 ? panels.get(0).getRangeAxis().getLabel() : WindowTexts.get("numbers.y");
    }

    /** The panels of a chart; itself if it has one only. */
    private static List<XYPlot> panels(JFreeChart chart) {
        List<?> panels = chart.getPlot() instanceof CombinedDomainXYPlot above
                ? above.getSubplots()
                : chart.getPlot() instanceof CombinedRangeXYPlot beside
                        ? beside.getSubplots()
                        : List.of(chart.getPlot());
        return panels.stream().map(XYPlot.class::cast).toList();
    }

    /** Every known point of a map: temperature and share [%], at each speed or flow. */
    public static List<NumberRow> rows(ShareGrid grid, UnitSystem units) {
        List<NumberRow> rows = new ArrayList<>();
        Unit degrees = units.unit(Kind.TEMPERATURE);
        Kind driven = grid.engine() ? Kind.ROTATION : Kind.FLOW_RATE;
        for (int d = 0; d < grid.drive().length; d++) {
            String drive = WindowTexts.get("numbers.driven", QuantityFormat.format(grid.drive()[d], driven, units));
            for (int t = 0; t < grid.temperature().length; t++) {
                if (Double.isFinite(grid.share()[t][d])) {
                    rows.add(new NumberRow(
                            drive, text(degrees.fromSi(grid.temperature()[t])), text(100 * grid.share()[t][d])));
                }
            }
        }
        return rows;
    }

    /** Values of all curves at one place along the chart, with their units. */
    static String readOut(JFreeChart chart, double x) {
        String at = value(x, ((XYPlot) chart.getPlot()).getDomainAxis());
        StringBuilder words = new StringBuilder(WindowTexts.get("readout", at));
        for (XYPlot plot : panels(chart)) {
            XYDataset data = plot.getDataset();
            for (int s = 0; s < data.getSeriesCount(); s++) {
                double y = DatasetUtils.findYValue(data, s, x);
                if (Double.isFinite(y)) {
                    words.append("   ")
                            .append(WindowTexts.get("readout.value", name(data, s), value(y, plot.getRangeAxis())));
                }
            }
        }
        return words.toString();
    }

    /** A value with the unit of its axis, which stands behind the last comma of the label. */
    private static String value(double value, ValueAxis axis) {
        int comma = axis.getLabel().lastIndexOf(", ");
        return comma < 0
                ? text(value)
                : WindowTexts.get("readout.unit", text(value), axis.getLabel().substring(comma + 2));
    }

    /** Keys of curves begin with a number that keeps like names apart. */
    private static String name(XYDataset data, int series) {
        return data.getSeriesKey(series).toString().replaceFirst("^\\d+ ", "");
    }

    public static String text(double value) {
        // a place along the chart is a sum of steps, so that nought is seldom exact
        return String.format(Locale.ROOT, "%.4g", Math.abs(value) < NOUGHT ? 0 : value);
    }
}
