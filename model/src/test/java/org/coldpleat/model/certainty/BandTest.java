package org.coldpleat.model.certainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BandTest {
    @Test
    void aNarrowBandIsTheSameEitherWay() {
        Band band = new Band(10, 0.2);
        assertFalse(band.isWide());
        // the two differ by half the square of the relative half-width
        assertEquals(band.low(), band.lowByFactor(), 0.5 * 0.04 * 0.04 * 10 * 1.05);
        assertEquals(band.high(), band.highByFactor(), 0.5 * 0.04 * 0.04 * 10 * 1.05);
    }

    @Test
    void aWideBandStaysAboveNothing() {
        Band band = new Band(1.1, 0.6);
        assertTrue(band.isWide());
        assertTrue(band.low() < 0);
        assertTrue(band.lowByFactor() > 0);
        assertEquals(1.1 * 1.1, band.lowByFactor() * band.highByFactor(), 1e-12);
    }

    @Test
    void nothingIsNotWide() {
        assertFalse(Band.exact(0).isWide());
        assertFalse(new Band(0, 1).isWide());
    }

    @Test
    void aBandStaysAboveTheLeastValue() {
        Band band = new Band(10.9, 15);
        assertTrue(band.lowByFactor() < 1);
        assertTrue(band.lowByFactor(1) > 1);
        assertEquals(9.9 * 9.9, (band.lowByFactor(1) - 1) * (band.highByFactor(1) - 1), 1e-9);
        assertEquals(1, new Band(1, 0.5).lowByFactor(1));
    }
}
