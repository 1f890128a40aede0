package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.confidence.Answer;
import org.coldpleat.model.confidence.Model;
import org.coldpleat.model.confidence.NextMeasurement;
import org.coldpleat.model.confidence.SobolIndices;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.FirstOrder;
import org.junit.jupiter.api.Test;

/**
 * What to measure next for an element at constant flow near 0 degC (numbers derived here): opening temperature
 * {@code T = T0 + ln(mu0 Q t/(k A p))/s}, A = 2 N H d, with a viscosity that falls by s = 0.065 per kelvin.
 */
class MeasureNextOrderTest {
    private static final String SOURCE = "derived here";

    private static final double SLOPE = 0.065;
    private static final double PSI = 6894.757;
    private static final List<String> ORDER = List.of("permeability", "label", "viscosity", "depth", "count");

    private static UncertainQuantity between(String name, double low, double high) {
        return UncertainQuantity.of(name, Measured.between(Kind.RATIO, low, high, Provenance.GUESSED));
    }

    private static final List<UncertainQuantity> UNKNOWNS = List.of(
            between("count", 54, 56),
            between("depth", 13.5e-3, 14.5e-3),
            between("viscosity", 0.85 * 0.6665, 1.15 * 0.6665),
            between("label", 16 * PSI, 22 * PSI),
            between("permeability", 0.7 * 2.2e-11, 1.3 * 2.2e-11));

    private static double[] openingTemperature(double[] x) {
        double area = 2 * x[0] * 0.060 * x[1];
        double flow = 5 * 3.785411784e-3 / 60;
        return new double[] {273.15 + Math.log(x[2] * flow * 0.8e-3 / (x[4] * area * x[3])) / SLOPE};
    }

    /** Half effect of each whole range, as the logarithm gives it: ln(1.3), ln(22/16)/2, ln(1.15), 0.5/14, 1/55 over s. */
    @Test
    void effectOfEachRange() {
        Map<String, Double> expected =
                Map.of("permeability", 4.0, "label", 2.4, "viscosity", 2.2, "depth", 0.55, "count", 0.28);
        for (int i = 0; i < UNKNOWNS.size(); i++) {
            UncertainQuantity unknown = UNKNOWNS.get(i);
            double[] middle =
                    UNKNOWNS.stream().mapToDouble(u -> u.value().value()).toArray();
            double[] high = middle.clone();
            high[i] = unknown.value().high();
            double[] low = middle.clone();
            low[i] = unknown.value().low();
            boolean twoSided = unknown.name().equals("label");
            double effect = twoSided
                    ? (openingTemperature(low)[0] - openingTemperature(high)[0]) / 2
                    : openingTemperature(high)[0] - openingTemperature(middle)[0];
            // to the last printed digit; 2.45 K is printed as 2.4 and 2.15 K as 2.2
            check("effect of a whole range on the opening temperature")
                    .at(unknown.name())
                    .expected(expected.get(unknown.name()), "K")
                    .computed(Math.abs(effect))
                    .within(0.05, "the last printed digit; 2.45 is printed as 2.4 and 2.15 as 2.2");
        }
    }

    @Test
    void everyToolPutsThemInTheSameOrder() {
        Model model = MeasureNextOrderTest::openingTemperature;
        Map<String, Double> remaining = new HashMap<>();
        ORDER.forEach(name -> remaining.put(name, 0.1));
        List<String> gains =
                NextMeasurement.rank(model, Answer.finite(), UNKNOWNS, remaining, 8192, 1, Progress.NONE)
                        .orElseThrow()
                        .stream()
                        .map(NextMeasurement.Gain::group)
                        .toList();
        assertEquals(ORDER, gains);
        List<String> shares =
                SobolIndices.estimate(model, Answer.finite(), UNKNOWNS, 8192, 1, Progress.NONE)
                        .orElseThrow()
                        .shares()
                        .stream()
                        .sorted(Comparator.comparingDouble(SobolIndices.Share::total)
                                .reversed())
                        .map(SobolIndices.Share::group)
                        .toList();
        assertEquals(ORDER, shares);
        FirstOrder linear = FirstOrder.propagate(model, UNKNOWNS);
        List<String> slopes = List.of(0, 1, 2, 3, 4).stream()
                .sorted(Comparator.comparingDouble(i -> -Math.abs(linear.contributions()[0][i])))
                .map(i -> UNKNOWNS.get(i).name())
                .toList();
        assertEquals(ORDER, slopes);
    }

    /** The spread left after each measurement, against the variance of a sum of independent logarithms. */
    @Test
    void spreadLeftMatchesTheVarianceOfTheSum() {
        double all = 0;
        double label = 0;
        for (UncertainQuantity unknown : UNKNOWNS) {
            double variance =
                    varianceOfLogarithm(unknown.value().low(), unknown.value().high()) / (SLOPE * SLOPE);
            all += variance;
            label += unknown.name().equals("label") ? variance : 0;
        }
        NextMeasurement.Gain gain = NextMeasurement.rank(
                        MeasureNextOrderTest::openingTemperature,
                        Answer.finite(),
                        UNKNOWNS,
                        Map.of("label", 0.0),
                        16384,
                        1,
                        Progress.NONE)
                .orElseThrow()
                .get(0);
        // tolerance: three sampling errors of a mean square of 16384 plain draws, which these undercut
        check("spread now, drawn")
                .expected(Math.sqrt(all), "K")
                .computed(gain.spreadNow())
                .withinRelative(0.02, "three sampling errors of 16384 plain draws, which these undercut");
        check("spread after a label is measured, drawn")
                .expected(Math.sqrt(all - label), "K")
                .computed(gain.spreadAfter())
                .within(0.02 * Math.sqrt(all), "three sampling errors of 16384 plain draws, which these undercut");
    }

    /** Variance of ln x for x even between a and b (closed form, derived here). */
    private static double varianceOfLogarithm(double a, double b) {
        double mean = (b * (Math.log(b) - 1) - a * (Math.log(a) - 1)) / (b - a);
        double square = (secondMoment(b) - secondMoment(a)) / (b - a);
        return square - mean * mean;
    }

    private static double secondMoment(double x) {
        double l = Math.log(x);
        return x * (l * l - 2 * l + 2);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CONFIDENCE, quantity, SOURCE);
    }
}
