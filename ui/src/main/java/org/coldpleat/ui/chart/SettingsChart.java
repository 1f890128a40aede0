package org.coldpleat.ui.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.coldpleat.model.run.SettingsResult;
import org.coldpleat.model.run.SettingsResult.AfterStart;
import org.coldpleat.model.run.SettingsResult.Candidate;
import org.coldpleat.model.run.SettingsResult.Row;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Both risks of a valve setting, one above the other: unfiltered oil, and what the medium must bear. */
public final class SettingsChart {
    private static final double LITER = 1e3;

    private SettingsChart() {}

    /** The chart of a result. */
    public static JFreeChart of(SettingsResult result) {
        NumberAxis across = Axes.linear(ChartTexts.get("axis.setting"));
        List<Row> rows = result.candidates().stream()
                .filter(Candidate::hasValve)
                .flatMap(one -> one.rows().stream())
                .toList();
        double low = rows.stream().mapToDouble(Row::setting).min().orElse(0);
        double high = rows.stream().mapToDouble(Row::setting).max().orElse(1);
        across.setRange(Axes.KILOPASCAL.applyAsDouble(low), Axes.KILOPASCAL.applyAsDouble(high));
        Panels panels = new Panels(across);
        if (result.start().isPresent()) {
            XYPlot upper = panel(
                    panels,
                    result,
                    "axis.unfiltered",
                    row -> row.afterStart()
                            .filter(AfterStart::completed)
                            .map(start -> LITER * start.unfilteredVolume())
                            .orElse(Double.NaN));
            upper.getRangeAxis().setLowerBound(0);
        } else {
            panel(
                    panels,
                    result,
                    "axis.warmestOpen",
                    row -> row.openings().stream()
                            .mapToDouble(opening -> Axes.CELSIUS.applyAsDouble(opening.value()))
                            .filter(Double::isFinite)
                            .max()
                            .orElse(Double.NaN));
        }
        XYPlot lower = panel(panels, result, "axis.bears", row -> Axes.KILOPASCAL.applyAsDouble(row.elementPeak()));
        lower.getRangeAxis().setLowerBound(0);
        for (int c = 0; c < result.candidates().size(); c++) {
            Candidate one = result.candidates().get(c);
            panels.name(
                    c,
                    one.hasValve()
                            ? ChartTexts.get("legend.setNow", one.name(), Charts.number(one.measured() / 1000))
                            : ChartTexts.get("legend.noValve", one.name()));
        }
        String subtitle = result.start()
                .map(start -> ChartTexts.get(
                        result.invented() ? "subtitle.settingsInvented" : "subtitle.settings",
                        result.title(),
                        start.schedule(),
                        Charts.number(Axes.CELSIUS.applyAsDouble(start.from()))))
                .orElseGet(() -> ChartTexts.get(
                        result.invented() ? "subtitle.serviceInvented" : "subtitle.service", result.title()));
        return panels.chart(ChartTexts.get("settings.title"), subtitle, ChartTexts.get("key.settings"));
    }

    /** What the chart shows, for readers who cannot see it. */
    public static String description(SettingsResult result) {
        return ChartTexts.get(
                "description.settings",
                result.candidates().stream().map(Candidate::name).collect(Collectors.joining(", ")));
    }

    private static XYPlot panel(Panels panels, SettingsResult result, String label, ToDoubleFunction<Row> value) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYSeriesCollection rings = new XYSeriesCollection();
        int[] indices = new int[result.candidates().size()];
        for (int c = 0; c < indices.length; c++) {
            Candidate one = result.candidates().get(c);
            indices[c] = c;
            XYSeries curve = new XYSeries(c, false, true);
            XYSeries ring = new XYSeries(c, false, true);
            for (Row row : one.rows()) {
                double x = Axes.KILOPASCAL.applyAsDouble(row.setting());
                if (one.hasValve()) {
                    Panels.add(curve, x, value.applyAsDouble(row));
                }
                if (one.hasValve() && row.measured()) {
                    Panels.add(ring, x, value.applyAsDouble(row));
                }
            }
            curves.addSeries(curve);
            rings.addSeries(ring);
        }
        return panels.add(ChartTexts.get(label), curves, indices, rings);
    }
}
