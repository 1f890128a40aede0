package org.coldpleat.model.oil.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BiasedWaltherCurveTest {
    private static final double K = 273.15;
    private static final WaltherCurve LINE = WaltherCurve.through(40 + K, 248.5e-6, 100 + K, 20.45e-6);
    private static final BiasedWaltherCurve HEAVY = new BiasedWaltherCurve(LINE, 0.3469, 2.7);

    @Test
    void javadocExample() {
        assertEquals(4492e-6, HEAVY.kinematicViscosity(K), 1e-6);
    }

    @Test
    void biasIsBetaAtZeroAndNothingFrom40Upward() {
        assertEquals(-0.3469, Math.log(HEAVY.kinematicViscosity(K) / LINE.kinematicViscosity(K)), 1e-12);
        for (double t = 40; t <= 150; t += 10) {
            assertEquals(LINE.kinematicViscosity(t + K), HEAVY.kinematicViscosity(t + K));
            assertEquals(LINE.logSlope(t + K), HEAVY.logSlope(t + K));
        }
    }

    @Test
    void slopeAgreesWithDifferencesAcrossTheJoint() {
        double h = 1e-4;
        for (double t = -60; t <= 60; t += 5) {
            double difference = Math.log(HEAVY.kinematicViscosity(t + K + h) / HEAVY.kinematicViscosity(t + K - h));
            assertEquals(difference / (2 * h), HEAVY.logSlope(t + K), 1e-6);
        }
    }

    @Test
    void goesThroughItsPointsWhateverTheBias() {
        for (double beta : new double[] {-0.3, 0, 0.3}) {
            BiasedWaltherCurve curve = BiasedWaltherCurve.through(K, 4242e-6, 20 + K, 943e-6, beta, 2.7)
                    .orElseThrow();
            assertEquals(4242e-6, curve.kinematicViscosity(K), 1e-12);
            assertEquals(943e-6, curve.kinematicViscosity(20 + K), 1e-13);
        }
    }

    @Test
    void noCurveIfNoFallingLineIsLeftWithoutTheBias() {
        assertTrue(BiasedWaltherCurve.through(-30 + K, 1.01e-3, -29 + K, 1e-3, -0.5, 2.7)
                .isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new BiasedWaltherCurve(LINE, Double.NaN, 2.7));
        assertThrows(IllegalArgumentException.class, () -> new BiasedWaltherCurve(LINE, 0.1, 1));
    }
}
