package org.coldpleat.model.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FlowLawsTest {
    private static final Fluid OIL = new Fluid(0.2, 870);
    private static final AdditiveLaw HOLE = Openings.hole(3e-3, 2e-3, Openings.SHORT_TUBE);

    @Test
    void flowInvertsDropInBothDirections() {
        for (double q = 1e-10; q < 1e-2; q *= 7) {
            assertEquals(q, HOLE.flowRate(HOLE.pressureDrop(q, OIL), OIL), 1e-13 * q);
            assertEquals(-q, HOLE.flowRate(HOLE.pressureDrop(-q, OIL), OIL), 1e-13 * q);
        }
        assertEquals(0, HOLE.pressureDrop(0, OIL));
        assertEquals(0, HOLE.flowRate(0, OIL));
    }

    @Test
    void slopesAreReciprocal() {
        for (double q = 1e-8; q < 1e-2; q *= 7) {
            double dp = HOLE.pressureDrop(q, OIL);
            assertEquals(1, HOLE.slope(q, OIL) * HOLE.flowSlope(dp, OIL), 1e-12);
            assertEquals(HOLE.slope(q, OIL), HOLE.at(q, OIL).slope());
        }
    }

    @Test
    void partsAddInSeriesAndShareInParallel() {
        double one = HOLE.pressureDrop(1e-4, OIL);
        assertEquals(2 * one, HOLE.plus(HOLE).pressureDrop(1e-4, OIL), 1e-12 * one);
        assertEquals(3 * one, HOLE.times(3).pressureDrop(1e-4, OIL), 1e-12 * one);
        assertEquals(one, HOLE.parallelOf(5).pressureDrop(5e-4, OIL), 1e-12 * one);
    }

    @Test
    void wrongUseNamesValueLimitAndUnit() {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> Openings.hole(-1, 0, 0.6));
        assertEquals("diameter must be finite and above 0 m, was -1.0", e.getMessage());
    }

    /** At e = 1 the narrow annulus passes 2.5 times as much; in the middle nothing changes. */
    @Test
    void offCenterCoreLetsMorePass() {
        assertEquals(1, Passages.offCenterGain(0));
        assertEquals(1.375, Passages.offCenterGain(0.5), 1e-15);
        assertEquals(2.5, Passages.offCenterGain(1), 1e-15);
    }
}
