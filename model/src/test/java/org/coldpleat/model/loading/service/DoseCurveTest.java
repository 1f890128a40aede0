package org.coldpleat.model.loading.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.loading.service.ServicePlan.StartDose;
import org.junit.jupiter.api.Test;

class DoseCurveTest {
    /** A start whose valve begins to open at a ratio of 4: flat, then bent. */
    private static StartDose kinked(double ratio) {
        double share = Math.max(0, 1 - Math.pow(4 / ratio, 0.7));
        return new StartDose(2 * share, 2 * (1 - share));
    }

    @Test
    void keepsToTheToleranceAndStatesTheErrorThatItHas() {
        DoseCurve curve = new DoseCurve(DoseCurveTest::kinked, 2e-3);
        double worst = 0;
        for (double ratio = 1; ratio < 40; ratio *= 1.0137) {
            StartDose line = curve.at(ratio);
            double off = Math.abs(line.unfilteredVolume() - kinked(ratio).unfilteredVolume()) / 2;
            worst = Math.max(worst, off);
            assertEquals(2, line.unfilteredVolume() + line.filteredVolume(), 1e-12);
        }
        double seen = worst;
        // the corner may lie anywhere in a cell: its middle sees at least half of the greatest error
        assertTrue(seen <= 2 * 2e-3, () -> "error " + seen);
        assertTrue(seen <= 2 * curve.statedError(), () -> "error " + seen + ", stated " + curve.statedError());
        assertTrue(curve.starts() < 40, () -> "starts " + curve.starts());
    }

    @Test
    void makesOnlyTheCellsThatAreAskedFor() {
        DoseCurve curve = new DoseCurve(ratio -> new StartDose(0, 1), 2e-3);
        curve.at(1.1);
        curve.at(1.2);
        assertEquals(3, curve.starts());
        assertEquals(0, curve.statedError());
    }

    @Test
    void aJumpStaysInTheNarrowestCellAndIsStated() {
        DoseCurve curve = new DoseCurve(ratio -> new StartDose(ratio > 5 ? 1 : 0, ratio > 5 ? 0 : 1), 2e-3);
        assertEquals(0, curve.at(4.8).unfilteredVolume(), 1e-12);
        assertEquals(1, curve.at(5.2).unfilteredVolume(), 1e-12);
        curve.at(5.001);
        assertEquals(0.5, curve.statedError(), 1e-12);
    }
}
