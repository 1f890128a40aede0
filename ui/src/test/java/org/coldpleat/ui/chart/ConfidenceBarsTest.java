package org.coldpleat.ui.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.ConfidenceResult.Contribution;
import org.coldpleat.model.certainty.ConfidenceResult.Focus;
import org.coldpleat.model.certainty.ConfidenceResult.Measurement;
import org.coldpleat.model.certainty.ConfidenceResult.StateOutcome;
import org.coldpleat.model.certainty.ConfidenceResult.Verified;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.shared.quantity.UnitSystem;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class ConfidenceBarsTest {
    private static final double NEVER = Double.NEGATIVE_INFINITY;
    private static final Quantiles NONE = new Quantiles(0, 0, 0);

    private static StateOutcome outcome(String candidate, Quantiles opening, double chance) {
        return new StateOutcome(
                candidate, "idle", opening, chance, 0, 0, new double[] {chance, 0}, List.of(), List.of(), NONE, NONE);
    }

    private static ConfidenceResult result() {
        return result(0.05);
    }

    private static ConfidenceResult result(double totalError) {
        return new ConfidenceResult(
                "Case",
                "0",
                64,
                1,
                new double[] {238.15, 403.15},
                List.of(
                        outcome("Shut", new Quantiles(NEVER, NEVER, NEVER), 0.01),
                        outcome("Doubtful", new Quantiles(263.15, NEVER, 283.15), 0.7)),
                List.of(),
                new Focus(
                        "Doubtful",
                        "idle",
                        List.of(
                                new Contribution("first", 0.6, 0.1, 0.8, totalError),
                                new Contribution("second", Double.NaN, Double.NaN, Double.NaN, Double.NaN)),
                        List.of(new Measurement("first", 0.2, 5, 2, 0.5), new Measurement("second", 0.2, 5, 5, 0.5))),
                new Verified(1, 0),
                List.of());
    }

    private static List<String> words(XYPlot plot) {
        return plot.getAnnotations().stream()
                .filter(XYTextAnnotation.class::isInstance)
                .map(one -> ((XYTextAnnotation) one).getText().trim())
                .toList();
    }

    @Test
    void everyCandidateHasARowWithItsBandInWordsAndABarOnlyWhereItMayOpen() {
        XYPlot plot = ConfidenceBars.bands(result(), true, UnitSystem.METRIC).getXYPlot();
        assertEquals(
                List.of(
                        "idle - Shut   (opens at all: 1 %)",
                        "never", "idle - Doubtful   (opens at all: 70 %)", "never | -10 | 10"),
                words(plot));
        assertEquals(1, plot.getDataset().getSeriesCount());
        assertEquals(-10, plot.getDataset().getXValue(0, 0), 1e-9);
        assertEquals(2, plot.getDataset().getYValue(0, 0), 0.2);
    }

    @Test
    void aShareOfUnknownErrorKeepsItsBarAndSaysSo() {
        var both = (CombinedRangeXYPlot)
                ConfidenceBars.shares(result(Double.NaN), true, group -> "the " + group, UnitSystem.METRIC)
                        .getXYPlot();
        assertEquals(
                List.of("the first", "± ?", "the second", "not known: nothing varies"),
                words(both.getSubplots().get(0)));
    }

    @Test
    void sharesStandBesideWhatAMeasurementWouldLeave() {
        var both =
                (CombinedRangeXYPlot) ConfidenceBars.shares(result(), true, group -> "the " + group, UnitSystem.METRIC)
                        .getXYPlot();
        XYPlot shares = both.getSubplots().get(0);
        XYPlot gains = both.getSubplots().get(1);
        assertEquals(List.of("the first", "the second", "not known: nothing varies"), words(shares));
        assertTrue(gains.getDomainAxis().getRange().contains(5));
        // two bars and two errors for the first group, none for the second
        assertEquals(2 * (1 + 3) + 3, shares.getAnnotations().size());
        assertEquals(2 * (1 + 3), gains.getAnnotations().size());
    }
}
