package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.Anchor.Method;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class OilTest {
    private static final double K = 273.15;
    private static final Anchor WARM = Anchor.of(Method.KINEMATIC, 40 + K, 75e-6, Provenance.MAKER);
    private static final Anchor HOT = Anchor.of(Method.KINEMATIC, 100 + K, 13.5e-6, Provenance.MAKER);
    private static final Anchor COLD = Anchor.of(Method.LOW_SHEAR, -40 + K, 31.0, Provenance.MAKER);
    private static final Oil PLAIN = oil(WARM, HOT);
    private static final Oil ANCHORED = oil(WARM, HOT, COLD);

    private static Oil oil(Anchor... anchors) {
        return OilResolver.resolve(OilSpec.ofPoints("bench oil", anchors).withDensity(850, 15 + K))
                .orThrow();
    }

    private static double factor95(Oil oil, double celsius) {
        return Math.exp(1.96 * oil.viscositySpread(celsius + K));
    }

    @Test
    void spreadOfAMultigradeFollowsTheRuleOfItsClass() {
        // points good to 0.24 % add a little to the rule, most of it in the cold
        assertEquals(Math.log(1.03), Math.log(factor95(PLAIN, 60)), 0.003);
        assertEquals(Math.log(1.03) + 0.20, Math.log(factor95(PLAIN, 0)), 0.002);
        assertEquals(Math.log(1.03) + 0.45, Math.log(factor95(PLAIN, -20)), 0.003);
        assertEquals(Math.log(1.03) + 0.80, Math.log(factor95(PLAIN, -40)), 0.004);
    }

    @Test
    void spreadIsSmallAtAColdAnchorAndFadesInBetween() {
        double atAnchor = ANCHORED.viscositySpread(-40 + K);
        assertEquals(Math.hypot(0.05, Math.log(1.03) / 1.96), atAnchor, 1e-3);
        assertTrue(ANCHORED.viscositySpread(-20 + K) < 0.6 * PLAIN.viscositySpread(-20 + K));
        assertEquals(PLAIN.viscositySpread(60 + K), ANCHORED.viscositySpread(60 + K), 1e-3);
    }

    @Test
    void statedUncertaintyOfAPointWidensTheBandMoreTheFartherOff() {
        Oil rough = oil(WARM.withLnUncertainty(0.05), HOT);
        assertEquals(0.05, rough.viscositySpread(40 + K), 0.005);
        assertTrue(rough.viscositySpread(-20 + K) > Math.hypot(PLAIN.viscositySpread(-20 + K), 0.08));
    }

    @Test
    void pointsCloseTogetherGiveAWideBand() {
        Oil close = oil(WARM, Anchor.of(Method.KINEMATIC, 45 + K, 61e-6, Provenance.MEASURED));
        // readings 5 K apart, each good to 0.24 %: the line through them is good to about 60 K / 5 K times that
        assertEquals(0.025, close.viscositySpread(100 + K), 0.007);
        assertTrue(close.viscositySpread(100 + K) > 1.3 * PLAIN.viscositySpread(100 + K));
    }

    @Test
    void warmPointsOnlyMoveTheRuleUp() {
        Oil hot = oil(Anchor.of(Method.KINEMATIC, 80 + K, 21e-6, Provenance.MAKER), HOT);
        assertTrue(hot.viscositySpread(20 + K) > 2.5 * PLAIN.viscositySpread(20 + K));
    }

    @Test
    void shiftedOilLiesTheGivenDeviationsAwayAndCountsFromTheCenter() {
        for (double t = -40; t <= 150; t += 10) {
            double ratio = PLAIN.shifted(-1).shifted(2).kinematicViscosity(t + K) / PLAIN.kinematicViscosity(t + K);
            assertEquals(2 * PLAIN.viscositySpread(t + K), Math.log(ratio), 1e-12);
        }
    }

    @Test
    void slopeOfAShiftedOilAgreesWithDifferences() {
        Oil shifted = ANCHORED.shifted(2);
        for (double t = -47; t <= 150; t += 9) {
            double h = 1e-3;
            double difference = Math.log(shifted.kinematicViscosity(t + K + h) / shifted.kinematicViscosity(t + K - h));
            assertEquals(difference / (2 * h), shifted.logSlope(t + K), 1e-6);
        }
    }

    @Test
    void shiftedOilStillThinsAsItWarms() {
        for (double z : new double[] {-3, 3}) {
            for (Oil oil : new Oil[] {PLAIN.shifted(z), ANCHORED.shifted(z)}) {
                for (double t = -40; t <= 150; t += 0.5) {
                    assertTrue(oil.logSlope(t + K) < 0, () -> "z " + z);
                }
            }
        }
    }

    @Test
    void dynamicViscosityIsKinematicTimesDensity() {
        assertEquals(PLAIN.kinematicViscosity(253) * PLAIN.density(253), PLAIN.dynamicViscosity(253), 1e-15);
    }

    @Test
    void extrapolationIsMarkedBelowTheColdestPointAndOutsideTheDomain() {
        assertTrue(PLAIN.isExtrapolated(39 + K));
        assertTrue(!PLAIN.isExtrapolated(150 + K));
        assertTrue(PLAIN.isExtrapolated(151 + K));
        assertTrue(!ANCHORED.isExtrapolated(-40 + K));
    }
}
