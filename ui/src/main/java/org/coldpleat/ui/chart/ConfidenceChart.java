package org.coldpleat.ui.chart;

import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.ConfidenceResult.StateOutcome;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Panels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The chance that a bypass valve is open over oil temperature: one panel a state, one curve a candidate. */
public final class ConfidenceChart {
    private static final double PERCENT = 100;
    private static final double HALF = 50;

    private ConfidenceChart() {}

    /**
     * The chart of a result.
     *
     * @param invented true if the data are invented, which the chart then says
     */
    public static JFreeChart of(ConfidenceResult result, boolean invented, UnitSystem preferred) {
        Unit unit = ChartUnits.of(preferred).temperature();
        double[] temperature = result.temperature();
        NumberAxis across = Axes.linear(ChartTexts.get("axis.temperature", unit.symbol()));
        across.setRange(unit.fromSi(temperature[0]), unit.fromSi(temperature[temperature.length - 1]));
        Panels panels = new Panels(across);
        List<String> names = names(result);
        for (String state :
                result.outcomes().stream().map(StateOutcome::state).distinct().toList()) {
            panel(panels, result, state, names, unit);
        }
        for (int c = 0; c < names.size(); c++) {
            panels.name(c, names.get(c));
        }
        return panels.chart(
                ChartTexts.get("confidence.title"),
                ChartTexts.get(invented ? "subtitle.serviceInvented" : "subtitle.service", result.title()),
                ChartTexts.get("key.confidence", Integer.toString(result.draws())));
    }

    /** What the chart shows, for readers who cannot see it. */
    public static String description(ConfidenceResult result) {
        return ChartTexts.get("description.confidence", String.join(", ", names(result)));
    }

    private static List<String> names(ConfidenceResult result) {
        return result.outcomes().stream()
                .map(StateOutcome::candidate)
                .distinct()
                .collect(Collectors.toList());
    }

    private static void panel(Panels panels, ConfidenceResult result, String state, List<String> names, Unit unit) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYSeriesCollection rings = new XYSeriesCollection();
        List<StateOutcome> outcomes = result.outcomes().stream()
                .filter(one -> one.state().equals(state))
                .toList();
        int[] indices = outcomes.stream()
                .mapToInt(one -> names.indexOf(one.candidate()))
                .toArray();
        for (StateOutcome one : outcomes) {
            XYSeries curve = new XYSeries(one.candidate(), false, true);
            for (int i = 0; i < result.temperature().length; i++) {
                Panels.add(curve, unit.fromSi(result.temperature()[i]), PERCENT * one.openProbability()[i]);
            }
            curves.addSeries(curve);
            XYSeries ring = new XYSeries(one.candidate(), false, true);
            if (Double.isFinite(one.opening().median())) {
                ring.add(unit.fromSi(one.opening().median()), HALF);
            }
            rings.addSeries(ring);
        }
        XYPlot plot = panels.add(ChartTexts.get("axis.chanceOpen", state), curves, indices, rings);
        plot.getRangeAxis().setRange(-3, 103);
    }
}
