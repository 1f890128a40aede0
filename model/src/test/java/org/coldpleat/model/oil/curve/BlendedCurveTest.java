package org.coldpleat.model.oil.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BlendedCurveTest {
    private static final double K = 273.15;
    private static final WaltherCurve THICK = WaltherCurve.through(40 + K, 145e-6, 100 + K, 15e-6);
    private static final WaltherCurve THIN = WaltherCurve.through(40 + K, 44.8e-6, 100 + K, 8.7e-6);

    @Test
    void javadocExample() {
        assertEquals(8.08e-6, BlendedCurve.blend(5e-6, 20e-6, 0.4), 0.005e-6);
    }

    @Test
    void noShareAndTheWholeAreTheOilsThemselvesAndAnOilWithItselfIsTheOil() {
        for (double t = -40; t <= 150; t += 10) {
            same(THICK, new BlendedCurve(THICK, THIN, 0), t + K);
            same(THIN, new BlendedCurve(THICK, THIN, 1), t + K);
            same(THICK, new BlendedCurve(THICK, THICK, 0.3), t + K);
        }
    }

    @Test
    void moreOfTheThinOilMakesItThinner() {
        double before = Double.POSITIVE_INFINITY;
        for (double share = 0; share <= 1; share += 0.05) {
            double viscosity = new BlendedCurve(THICK, THIN, share).kinematicViscosity(K);
            assertTrue(viscosity < before);
            before = viscosity;
        }
    }

    @Test
    void slopeAndWeightsAgreeWithDifferences() {
        BlendedCurve blend = new BlendedCurve(THICK, THIN, 0.3);
        double h = 1e-4;
        for (double t = -40; t <= 140; t += 20) {
            double at = t + K;
            double difference = Math.log(blend.kinematicViscosity(at + h) / blend.kinematicViscosity(at - h));
            assertEquals(difference / (2 * h), blend.logSlope(at), 1e-7);
            double one = THICK.kinematicViscosity(at);
            double other = THIN.kinematicViscosity(at);
            double central = blend.kinematicViscosity(at);
            assertEquals(
                    Math.log(BlendedCurve.blend(one * Math.exp(h), other, 0.3) / central) / h,
                    blend.firstWeight(at),
                    1e-4);
            assertEquals(
                    Math.log(BlendedCurve.blend(one, other * Math.exp(h), 0.3) / central) / h,
                    blend.secondWeight(at),
                    1e-4);
            assertEquals(Math.log(BlendedCurve.blend(one, other, 0.3 + h) / central) / h, blend.shareSlope(at), 1e-3);
        }
    }

    @Test
    void shareMustBeAShare() {
        assertThrows(IllegalArgumentException.class, () -> new BlendedCurve(THICK, THIN, 1.01));
        assertThrows(IllegalArgumentException.class, () -> new BlendedCurve(THICK, THIN, -0.01));
    }

    private static void same(ViscosityCurve expected, ViscosityCurve curve, double temperature) {
        double viscosity = expected.kinematicViscosity(temperature);
        // the scale closes its round trip to 1e-7
        assertEquals(viscosity, curve.kinematicViscosity(temperature), 1e-7 * viscosity);
    }
}
