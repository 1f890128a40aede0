package org.coldpleat.model.valve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.Fluid;
import org.junit.jupiter.api.Test;

class FlapValveTest {
    private static final FlapValve FLAP = new FlapValve(3e-7, 800, 1.5e-3, 0.12, 1e-15);

    @Test
    void javadocExampleStripCompliance() {
        assertEquals(0.34e-6, FlapValve.stripCompliance(8e-3, 1.5e-3, 4e6, 0.5), 0.005e-6);
    }

    @Test
    void dropInvertsFlowAndRises() {
        for (Fluid oil : new Fluid[] {new Fluid(2, 890), new Fluid(0.012, 850)}) {
            double last = 0;
            for (double q = 1e-12; q < 1e-2; q *= 1.7) {
                Drop drop = FLAP.at(q, oil);
                assertEquals(q, FLAP.flowRate(drop.pressureDrop(), oil), 1e-9 * q);
                assertTrue(drop.pressureDrop() > last && drop.slope() > 0);
                last = drop.pressureDrop();
            }
        }
    }

    @Test
    void dropIsOddAndZeroAtZeroFlow() {
        Fluid oil = new Fluid(0.5, 870);
        assertEquals(0, FLAP.pressureDrop(0, oil));
        assertEquals(-FLAP.pressureDrop(1e-4, oil), FLAP.pressureDrop(-1e-4, oil));
    }

    @Test
    void slopeIsTheDerivativeOfTheDrop() {
        Fluid oil = new Fluid(0.5, 870);
        for (double q = 1e-6; q < 1e-3; q *= 1.5) {
            double h = 1e-5 * q;
            double numeric = (FLAP.pressureDrop(q + h, oil) - FLAP.pressureDrop(q - h, oil)) / (2 * h);
            assertEquals(numeric, FLAP.slope(q, oil), 1e-4 * numeric);
        }
    }
}
