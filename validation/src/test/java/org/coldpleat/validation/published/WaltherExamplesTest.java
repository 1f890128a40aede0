package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.oil.WaltherCurve;
import org.junit.jupiter.api.Test;

/** Printed results of the ASTM D341 line. */
class WaltherExamplesTest {
    @Test
    void lineThrough404And28GivesThePrintedViscosityAt60() {
        // Calculator page for ASTM D341, looked up: 404 mm2/s at 40 C, 28 mm2/s at 100 C, 132.126 at 60 C
        WaltherCurve curve = WaltherCurve.through(313.15, 404e-6, 373.15, 28e-6);
        // printed to 0.001; the page's zero of 273.15 K is not stated, 273 would move the result by below 0.01
        assertEquals(132.126e-6, curve.kinematicViscosity(333.15), 0.01e-6);
    }

    @Test
    void lineThrough32And5Point4GivesThePrintedConstants() {
        // Public worksheet for ASTM D341, looked up: 32 mm2/s at 40 C, 5.4 at 100 C, T = t + 273;
        // prints nu(80 C) = 8.5; A = 9.5259 and B = 3.7449 recomputed from its formula
        WaltherCurve curve = WaltherCurve.through(313, 32e-6, 373, 5.4e-6);
        assertEquals(9.5259, curve.a(), 1e-4); // half the last printed digit
        assertEquals(3.7449, curve.b(), 1e-4);
        assertEquals(8.5e-6, curve.kinematicViscosity(353), 0.05e-6);
    }
}
