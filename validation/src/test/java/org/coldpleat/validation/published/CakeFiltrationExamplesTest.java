package org.coldpleat.validation.published;

import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.CakeFiltration;
import org.junit.jupiter.api.Test;

/** Worked examples of cake filtration at constant pressure. */
class CakeFiltrationExamplesTest {
    private static final String SOURCE =
            "Geankoplis, Transport Processes and Unit Operations, after Ruth and Kempe; numbers from memory";

    /**
     * Geankoplis, Transport Processes and Unit Operations, filtration example after the data of Ruth and Kempe (CaCO3
     * slurry at 298 K): data and printed results 1.863e11 m/kg and 10.63e10 1/m from memory.
     */
    private static final CakeFiltration.Run SLURRY = new CakeFiltration.Run(0.0439, 338e3, 8.937e-4, 23.47);

    private static final CakeFiltration RUTH_KEMPE = CakeFiltration.fromLine(3.00e6, 6400, SLURRY);

    @Test
    void constantsFromSlopeAndIntercept() {
        // half of the last of four printed digits, and as much again for the rounded slope's own digits
        check("specific cake resistance")
                .expected(1.863e11, "m/kg")
                .computed(RUTH_KEMPE.specificResistance())
                .within(0.001e11, "half of the last printed digit, and as much again for the rounded slope");
        check("medium resistance from a filtration line")
                .expected(1.063e11, "1/m")
                .computed(RUTH_KEMPE.mediumResistance())
                .within(0.001e11, "half of the last printed digit, and as much again for the rounded slope");
    }

    /**
     * The next worked example of the same book, same cake on a press of 20 frames, 0.873 m2 each, 3.37 m3 of filtrate: it
     * prints 269.7 s; from memory.
     */
    @Test
    void timeOfALargePressWithTheSameCake() {
        CakeFiltration.Run press = new CakeFiltration.Run(20 * 0.873, 338e3, 8.937e-4, 23.47);
        // the book rounds slope and intercept to 37.93/2 and 16.10 before use: 0.1 %
        check("time of a large press with the same cake")
                .expected(269.7, "s")
                .computed(RUTH_KEMPE.time(3.37, press))
                .within(0.3, "the book rounds slope and intercept before use: 0.1 %");
        ExternalCheck.of(Topic.LOADING, "volume back from the time", "derived here")
                .expected(3.37, "m3")
                .computed(RUTH_KEMPE.volume(RUTH_KEMPE.time(3.37, press), press))
                .within(1e-12, "arithmetic");
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
        ExternalCheck.of(
                        Topic.LOADING,
                        "cake constant of a leaf filter from two readings",
                        "derived here from the data of a public exercise")
                .expected(7.0e14, "1/m2")
                .computed(cake.specificResistance())
                .withinRelative(1e-9, "arithmetic");
        ExternalCheck.of(
                        Topic.LOADING,
                        "medium resistance of a leaf filter from two readings",
                        "derived here from the data of a public exercise")
                .expected(2.45e12, "1/m")
                .computed(cake.mediumResistance())
                .withinRelative(1e-9, "arithmetic");
        ExternalCheck.of(Topic.LOADING, "first reading of the leaf filter back", "derived here")
                .expected(300, "s")
                .computed(cake.time(250e-6, leaf))
                .within(1e-9, "arithmetic");
        ExternalCheck.of(Topic.LOADING, "second reading of the leaf filter back", "derived here")
                .expected(400e-6, "m3")
                .computed(cake.volume(600, leaf))
                .within(1e-15, "arithmetic");
    }

    @Test
    void cakeIsTheBlockingLawOfExponentZero() {
        double faceVelocity = 338e3 / (8.937e-4 * RUTH_KEMPE.mediumResistance());
        double time = RUTH_KEMPE.asBlockingLaw().timeAtConstantPressure(5e-3 / 0.0439, faceVelocity, 23.47);
        ExternalCheck.of(Topic.LOADING, "cake as the blocking law of exponent zero", "derived here")
                .expected(RUTH_KEMPE.time(5e-3, SLURRY), "s")
                .computed(time)
                .within(1e-10 * time, "arithmetic");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
