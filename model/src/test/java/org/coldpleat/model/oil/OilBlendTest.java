package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.Anchor.Method;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class OilBlendTest {
    private static final double K = 273.15;
    private static final Oil MAIN = oil("main", 880, -30, point(40, 108e-6), point(100, 14.4e-6));
    private static final Oil ADDED = oil("added", 850, -39, point(40, 63e-6), point(100, 10.9e-6));

    private static Anchor point(double celsius, double viscosity) {
        return Anchor.of(Method.KINEMATIC, celsius + K, viscosity, Provenance.MAKER);
    }

    private static Oil oil(String name, double density, double pourPoint, Anchor... anchors) {
        return OilResolver.resolve(OilSpec.ofPoints(name, anchors)
                        .withDensity(density, 15 + K)
                        .withPourPoint(pourPoint + K))
                .orThrow();
    }

    @Test
    void nothingPouredInLeavesTheOilAsItWas() {
        Oil blend = new OilBlend(MAIN, ADDED, 0, 0).oil();
        for (double t = -40; t <= 150; t += 10) {
            double main = MAIN.kinematicViscosity(t + K);
            assertEquals(main, blend.kinematicViscosity(t + K), 1e-7 * main);
            assertEquals(MAIN.viscositySpread(t + K), blend.viscositySpread(t + K), 1e-3);
        }
        assertEquals(880, blend.density(15 + K), 1e-9);
    }

    @Test
    void aBlendLiesBetweenItsOilsAndStillFalls() {
        for (double z : new double[] {-3, 0, 3}) {
            Oil blend = new OilBlend(MAIN, ADDED, 0.3, 0.05).oil().shifted(z);
            for (double t = -40; t <= 150; t += 2.5) {
                assertTrue(blend.logSlope(t + K) < 0);
                if (z == 0) {
                    assertTrue(blend.kinematicViscosity(t + K) < MAIN.kinematicViscosity(t + K));
                    assertTrue(blend.kinematicViscosity(t + K) > ADDED.kinematicViscosity(t + K));
                }
            }
        }
    }

    @Test
    void densityIsThatOfTheVolumesAndThePourPointTheWarmer() {
        Oil blend = new OilBlend(MAIN, ADDED, 0.3, 0).oil();
        assertEquals(0.7 * 880 + 0.3 * 850, blend.density(15 + K), 1e-9);
        assertEquals(-30 + K, blend.pourPoint().orElseThrow(), 1e-9);
    }

    @Test
    void theRuleAddsTenPercentForEqualPartsAndAnUncertainShareItsOwn() {
        Oil equal = new OilBlend(MAIN, MAIN, 0.5, 0).oil();
        double ofOils = MAIN.viscositySpread(60 + K) / Math.sqrt(2);
        assertEquals(Math.hypot(ofOils, Math.log(1.1) / 1.96), equal.viscositySpread(60 + K), 1e-4);
        double sure = new OilBlend(MAIN, ADDED, 0.3, 0).oil().viscositySpread(60 + K);
        assertTrue(new OilBlend(MAIN, ADDED, 0.3, 0.2).oil().viscositySpread(60 + K) > 1.2 * sure);
    }

    @Test
    void aBlendIsKnownInTheColdOnlyIfBothOilsAre() {
        Oil cold = oil("cold", 880, -30, point(40, 108e-6), point(100, 14.4e-6), point(-20, 9e-3));
        assertEquals(40 + K, new OilBlend(cold, ADDED, 0.3, 0).oil().lowestAnchor(), 1e-9);
        Oil both = new OilBlend(cold, cold, 0.3, 0).oil();
        assertEquals(-20 + K, both.lowestAnchor(), 1e-9);
        assertTrue(both.hasColdAnchor());
    }

    @Test
    void aShareMustBeAShare() {
        assertThrows(IllegalArgumentException.class, () -> new OilBlend(MAIN, ADDED, 1.2, 0));
    }
}
