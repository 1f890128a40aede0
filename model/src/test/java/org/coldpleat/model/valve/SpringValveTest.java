package org.coldpleat.model.valve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.junit.jupiter.api.Test;

class SpringValveTest {
    private static final Fluid COLD = new Fluid(1.5, 880);
    private static final Fluid HOT = new Fluid(0.01, 830);
    private static final SpringValve WITH_FORCE =
            new SpringValve(80e3, 11e-3, 900, 4e-3, 0.7, 0.6, Openings.hole(9e-3, 2e-3, 0.7), 1e-16, 0.3, 70e3);

    @Test
    void slopeIsTheDerivativeOfTheFlow() {
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            for (double dp = -50e3; dp < 900e3; dp += 1234.5) {
                double h = 0.5;
                double numeric = (WITH_FORCE.flowRate(dp + h, oil) - WITH_FORCE.flowRate(dp - h, oil)) / (2 * h);
                // second-order difference across a corner of 80 Pa half-width misses by h/80 at most
                assertEquals(numeric, WITH_FORCE.flowSlope(dp, oil), 1e-2 * numeric + 1e-22);
            }
        }
    }

    @Test
    void flowNeverFalls() {
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            double last = Double.NEGATIVE_INFINITY;
            for (double dp = -200e3; dp < 900e3; dp += 37) {
                double flow = WITH_FORCE.flowRate(dp, oil);
                assertTrue(flow >= last);
                last = flow;
            }
        }
    }

    @Test
    void shutValveOnlyLeaks() {
        assertEquals(1e-16 * 50e3 / 1.5, WITH_FORCE.flowRate(50e3, COLD), 1e-25);
        assertFalse(WITH_FORCE.isOpen(80e3));
        assertTrue(WITH_FORCE.isOpen(80.001e3));
    }

    @Test
    void frictionHoldsAnOpenedValveDownToTheClosingPressure() {
        assertEquals(70e3, WITH_FORCE.afterOpening().openingPressure());
        assertTrue(WITH_FORCE.afterOpening().flowRate(75e3, HOT) > WITH_FORCE.flowRate(75e3, HOT));
    }

    @Test
    void wrongUseNamesValueLimitAndUnit() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> SpringValve.disc(-1, 11e-3, 900, 4e-3, 0));
        assertTrue(e.getMessage().contains("openingPressure") && e.getMessage().contains("Pa"));
    }
}
