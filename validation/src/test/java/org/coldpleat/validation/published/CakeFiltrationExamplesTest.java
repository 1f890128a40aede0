package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.loading.CakeFiltration;
import org.junit.jupiter.api.Test;

/** Worked examples of cake filtration at constant pressure. */
class CakeFiltrationExamplesTest {
    /**
     * Geankoplis, Transport Processes and Unit Operations, filtration example after the data of Ruth and Kempe (CaCO3
     * slurry at 298 K): data and printed results 1.863e11 m/kg and 10.63e10 1/m from memory.
     */
    private static final CakeFiltration.Run SLURRY = new CakeFiltration.Run(0.0439, 338e3, 8.937e-4, 23.47);

    private static final CakeFiltration RUTH_KEMPE = CakeFiltration.fromLine(3.00e6, 6400, SLURRY);

    @Test
    void constantsFromSlopeAndIntercept() {
        // half of the last of four printed digits, and as much again for the rounded slope's own digits
        assertEquals(1.863e11, RUTH_KEMPE.specificResistance(), 0.001e11);
        assertEquals(1.063e11, RUTH_KEMPE.mediumResistance(), 0.001e11);
    }

    /**
     * The next worked example of the same book, same cake on a press of 20 frames, 0.873 m2 each, 3.37 m3 of filtrate: it
     * prints 269.7 s; from memory.
     */
    @Test
    void timeOfALargePressWithTheSameCake() {
        CakeFiltration.Run press = new CakeFiltration.Run(20 * 0.873, 338e3, 8.937e-4, 23.47);
        // the book rounds slope and intercept to 37.93/2 and 16.10 before use: 0.1 %
        assertEquals(269.7, RUTH_KEMPE.time(3.37, press), 0.3);
        assertEquals(3.37, RUTH_KEMPE.volume(RUTH_KEMPE.time(3.37, press), press), 1e-12);
    }

    /**
     * Leaf filter of 0.05 m2 at 0.7 bar, 1 mPa s: 250 cm3 in the first five minutes, 150 cm3 in the next five. Exercise of a
     * public course page, author not stated; the results are derived here from its data.
     */
    @Test
    void constantsFromTwoReadingsOfALeafFilter() {
        CakeFiltration.Run leaf = new CakeFiltration.Run(0.05, 0.7e5, 1e-3, 1);
        CakeFiltration cake = CakeFiltration.fromReadings(new double[] {300, 600}, new double[] {250e-6, 400e-6}, leaf);
        // with 1 kg/m3 the specific resistance stands for its product with the unknown concentration [1/m2]
        assertEquals(7.0e14, cake.specificResistance(), 1e-9 * 7.0e14);
        assertEquals(2.45e12, cake.mediumResistance(), 1e-9 * 2.45e12);
        assertEquals(300, cake.time(250e-6, leaf), 1e-9);
        assertEquals(400e-6, cake.volume(600, leaf), 1e-15);
    }

    @Test
    void cakeIsTheBlockingLawOfExponentZero() {
        double faceVelocity = 338e3 / (8.937e-4 * RUTH_KEMPE.mediumResistance());
        double time = RUTH_KEMPE.asBlockingLaw().timeAtConstantPressure(5e-3 / 0.0439, faceVelocity, 23.47);
        assertEquals(RUTH_KEMPE.time(5e-3, SLURRY), time, 1e-10 * time);
    }
}
