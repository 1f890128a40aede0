package org.coldpleat.ui.chart;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsResult.AfterStart;
import org.coldpleat.model.sizing.SettingsResult.Candidate;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.Panels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Both risks of a valve setting, one above the other: unfiltered oil, and what the medium must bear. */
public final class SettingsChart {
    private SettingsChart() {}

    /** The chart of a result. */
    public static JFreeChart of(SettingsResult result, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        NumberAxis across =
                Axes.linear(ChartTexts.get("axis.setting", units.pressure().symbol()));
        List<Row> rows = result.candidates().stream()
                .filter(Candidate::hasValve)
                .flatMap(one -> one.rows().stream())
                .toList();
        double low = rows.stream().mapToDouble(Row::setting).min().orElse(0);
        double high = rows.stream().mapToDouble(Row::setting).max().orElse(1);
        across.setRange(units.pressure().fromSi(low), units.pressure().fromSi(high));
        Panels panels = new Panels(across);
        if (result.start().isPresent()) {
            XYPlot upper = panel(
                    panels,
                    result,
                    ChartTexts.get("axis.unfiltered", units.volume().symbol()),
                    units,
                    row -> row.afterStart()
                            .filter(AfterStart::completed)
                            .map(start -> units.volume().fromSi(start.unfilteredVolume()))
                            .orElse(Double.NaN));
            upper.getRangeAxis().setLowerBound(0);
        } else {
            panel(
                    panels,
                    result,
                    ChartTexts.get("axis.warmestOpen", units.temperature().symbol()),
                    units,
                    row -> row.openings().stream()
                            .mapToDouble(opening -> units.temperature().fromSi(opening.value()))
                            .filter(Double::isFinite)
                            .max()
                            .orElse(Double.NaN));
        }
        XYPlot lower = panel(
                panels,
                result,
                ChartTexts.get("axis.bears", units.pressure().symbol()),
                units,
                row -> units.pressure().fromSi(row.elementPeak()));
        lower.getRangeAxis().setLowerBound(0);
        for (int c = 0; c < result.candidates().size(); c++) {
            Candidate one = result.candidates().get(c);
            panels.name(
                    c,
                    one.hasValve()
                            ? ChartTexts.get(
                                    "legend.setNow",
                                    one.name(),
                                    Charts.number(units.pressure().fromSi(one.measured())),
                                    units.pressure().symbol())
                            : ChartTexts.get("legend.noValve", one.name()));
        }
        String subtitle = result.start()
                .map(start -> ChartTexts.get(
                        result.invented() ? "subtitle.settingsInvented" : "subtitle.settings",
                        result.title(),
                        start.schedule(),
                        Charts.number(units.temperature().fromSi(start.from())),
                        units.temperature().symbol()))
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

    private static XYPlot panel(
            Panels panels, SettingsResult result, String label, ChartUnits units, ToDoubleFunction<Row> value) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYSeriesCollection rings = new XYSeriesCollection();
        int[] indices = new int[result.candidates().size()];
        for (int c = 0; c < indices.length; c++) {
            Candidate one = result.candidates().get(c);
            indices[c] = c;
            XYSeries curve = new XYSeries(c, false, true);
            XYSeries ring = new XYSeries(c, false, true);
            for (Row row : one.rows()) {
                double x = units.pressure().fromSi(row.setting());
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
        return panels.add(label, curves, indices, rings);
    }
}
