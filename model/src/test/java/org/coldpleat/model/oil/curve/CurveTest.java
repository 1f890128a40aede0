package org.coldpleat.model.oil.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CurveTest {
    private static final double K = 273.15;
    private static final WaltherCurve THIN = WaltherCurve.through(40 + K, 44.8e-6, 100 + K, 8.7e-6);
    private static final ColdAnchoredCurve ANCHORED = ColdAnchoredCurve.through(
                    -40 + K, 35065e-6, 40 + K, 75e-6, 100 + K, 13.5e-6)
            .orElseThrow();

    @Test
    void javadocExampleOfTheWaltherLine() {
        WaltherCurve curve = WaltherCurve.through(40 + K, 404e-6, 100 + K, 28e-6);
        assertEquals(132.13e-6, curve.kinematicViscosity(60 + K), 0.005e-6);
    }

    @Test
    void waltherLineGoesThroughItsPointsInEitherOrder() {
        WaltherCurve reversed = WaltherCurve.through(100 + K, 8.7e-6, 40 + K, 44.8e-6);
        assertEquals(44.8e-6, reversed.kinematicViscosity(40 + K), 1e-15);
        assertEquals(8.7e-6, reversed.kinematicViscosity(100 + K), 1e-15);
        assertEquals(THIN.a(), reversed.a(), 1e-12);
    }

    @Test
    void waltherLineGoesThroughAThinPointToo() {
        WaltherCurve curve = WaltherCurve.through(40 + K, 2.6e-6, 100 + K, 1.12e-6);
        // one Newton step after the published inverse leaves about the square of its 2e-4 mm2/s
        assertEquals(1.12e-6, curve.kinematicViscosity(100 + K), 1e-12);
    }

    @Test
    void shortFormOfTheScaleGivesItsKnownValues() {
        // ASTM D341-09(2015) short form, five decimals derived here
        assertEquals(1.20151, WaltherScale.shifted(0.4), 1e-5);
        assertEquals(1.72193, WaltherScale.shifted(1.0), 1e-5);
        assertEquals(5.70000, WaltherScale.shifted(5.0), 1e-5);
    }

    @Test
    void publishedInverseClosesTheRoundTrip() {
        for (double n = 0.21; n < 10; n += 0.01) {
            // error of the published pair of formulas over 0.21 to 10 mm2/s
            assertEquals(n, WaltherScale.publishedInverse(WaltherScale.shifted(n) - 0.7), 2e-4);
            // ours after its Newton step
            assertEquals(n * 1e-6, WaltherScale.viscosity(WaltherScale.scaled(n * 1e-6)), 1e-7 * n * 1e-6);
        }
    }

    @Test
    void anchoredCurveMeetsAllThreePointsAndTheJoint() {
        assertEquals(35065e-6, ANCHORED.kinematicViscosity(-40 + K), 1e-12);
        assertEquals(75e-6, ANCHORED.kinematicViscosity(40 + K), 1e-14);
        assertEquals(75e-6, ANCHORED.kinematicViscosity(Math.nextDown(40 + K)), 1e-13);
        assertEquals(13.5e-6, ANCHORED.kinematicViscosity(100 + K), 1e-14);
    }

    @Test
    void anchoredCurveIsTheVogelCurveOnlyStrictlyBelowTheJoint() {
        double below = Math.nextDown(40 + K);
        assertEquals(ANCHORED.cold().logSlope(below), ANCHORED.logSlope(below));
        assertEquals(ANCHORED.warm().logSlope(40 + K), ANCHORED.logSlope(40 + K));
    }

    @Test
    void slopesAgreeWithDifferences() {
        QuadraticWaltherCurve bent = QuadraticWaltherCurve.through(-40 + K, 35065e-6, 40 + K, 75e-6, 100 + K, 13.5e-6)
                .orElseThrow();
        for (ViscosityCurve curve : new ViscosityCurve[] {THIN, ANCHORED, bent, new VogelCurve(-2, 1000, 150)}) {
            for (double t = -170; t <= 150; t += 17) {
                double h = 1e-3;
                double difference = Math.log(curve.kinematicViscosity(t + K + h) / curve.kinematicViscosity(t + K - h));
                double expected = difference / (2 * h);
                assertEquals(expected, curve.logSlope(t + K), 2e-6 * Math.abs(expected) + 1e-10, curve + " at " + t);
            }
        }
    }

    @Test
    void vogelCurveIsRefusedWhenItsPoleComesNearTheDomain() {
        // nearly no thinning between the warm points and a lot in the cold
        assertTrue(VogelCurve.through(0 + K, 5000e-6, 40 + K, 20e-6, 100 + K, 15e-6)
                .isEmpty());
        // thins faster warm than cold: c below 0
        assertTrue(VogelCurve.through(0 + K, 110e-6, 40 + K, 100e-6, 100 + K, 10e-6)
                .isEmpty());
    }

    @Test
    void quadraticCurveIsRefusedWhenItTurns() {
        assertTrue(QuadraticWaltherCurve.through(0 + K, 110e-6, 40 + K, 100e-6, 100 + K, 5e-6)
                .isEmpty());
    }

    @Test
    void vogelCurveStaysFiniteBelowItsPole() {
        VogelCurve curve = new VogelCurve(-2, 1000, 150);
        assertTrue(curve.kinematicViscosity(100) > curve.kinematicViscosity(160));
        assertTrue(Double.isFinite(curve.kinematicViscosity(100)));
    }

    @Test
    void pointsThatDoNotFallAreWrongUse() {
        assertThrows(IllegalArgumentException.class, () -> WaltherCurve.through(313, 10e-6, 373, 10e-6));
        assertThrows(IllegalArgumentException.class, () -> WaltherCurve.through(313, 10e-6, 313, 9e-6));
        assertThrows(IllegalArgumentException.class, () -> WaltherCurve.through(313, 44.8, 373, 8.7));
    }
}
