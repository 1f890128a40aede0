package org.coldpleat.model.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CoolantTest {
    private static final double ICE = 273.15;

    private static Coolant coolant(double radiator) {
        return new Coolant(20e3, 1, 160, 30, radiator, ICE + 82, ICE + 95);
    }

    @Test
    void thermostatLetsThroughWhatHoldsTheCoolant() {
        // 6 kW at 86.01 degrees C, of which half the last digit is worth 13 W
        assertEquals(6000, coolant(400).loss(ICE + 86.01, ICE + 20), 14);
        assertEquals(0, coolant(400).loss(ICE + 82, ICE + 20));
        assertEquals(400 * 80, coolant(400).loss(ICE + 100, ICE + 20), 1e-9);
    }

    @Test
    void lossRisesWithoutACorner() {
        Coolant coolant = coolant(400);
        double before = -1;
        for (int i = 0; i < 200; i++) {
            double loss = coolant.loss(ICE + 80 + 0.1 * i, ICE + 20);
            assertTrue(loss >= before);
            before = loss;
        }
        double step = 1e-4;
        assertEquals(0, coolant.loss(ICE + 82 + step, ICE + 20) / step, 0.1);
    }

    @Test
    void radiatorHoldsUpToItsHeat() {
        double least = 6000.0 / 75;
        assertTrue(coolant(1.001 * least).holds(6000, ICE + 20));
        assertFalse(coolant(0.99 * least).holds(6000, ICE + 20));
        assertThrows(IllegalArgumentException.class, () -> new Coolant(20e3, 1, 160, 30, 400, ICE + 95, ICE + 82));
    }
}
