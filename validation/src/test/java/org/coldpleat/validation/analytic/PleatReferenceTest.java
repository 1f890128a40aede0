package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.ParallelLegs;
import org.junit.jupiter.api.Test;

/**
 * Every row of the own 2-D Stokes-Brinkman reference, and the 1-D columns printed beside it (derived here, see the header
 * of the table): parallel, V and radial pleats, with and without folds, slip and in-plane variations.
 */
class PleatReferenceTest {
    /** Printed with six significant digits: half a unit in the sixth is at worst 5e-6 of the value. */
    private static final double PRINTED = 5e-6;

    private static final List<Map<String, String>> ROWS =
            TableRows.read(PleatReferenceTest.class, "pleat_reference.csv");

    private static final String SOURCE = "2-D Stokes-Brinkman reference and 1-D columns beside it, derived here";

    @Test
    void tableIsWhole() {
        assertEquals(74, ROWS.size());
    }

    @Test
    void correctedModelReproducesThePrintedDigits() {
        check(
                "R_1d_corrected",
                "pleat resistance, limit of fine cells",
                "six significant digits: half the sixth",
                row -> PRINTED,
                row -> extrapolated(row, closure(row)));
    }

    @Test
    void closedFormReproducesThePrintedDigitsOfParallelLegs() {
        check(
                "R_1d_corrected",
                "pleat resistance of parallel legs, closed form",
                "six significant digits: half the sixth",
                row -> row.get("shape").equals("rect") ? PRINTED : Double.NaN,
                row -> ParallelLegs.pleatResistance(geometry(row), closure(row), mediumResistance(row)));
    }

    @Test
    void plainModelReproducesThePrintedDigits() {
        check(
                "R_1d_plain",
                "pleat resistance without folds and slip",
                "six significant digits: half the sixth",
                row -> PRINTED,
                row -> {
                    PleatGeometry folded = geometry(row);
                    // Plain columns: no folds; length is the depth for parallel legs, one thickness less for tapered
                    // folded
                    // ones
                    boolean shorter = folded.ends() == PleatEnds.FOLDED && taper(row) > 0;
                    double depth = folded.pleatDepth() - (shorter ? folded.thickness() : 0);
                    PleatGeometry plugged = new PleatGeometry(
                            depth,
                            folded.thickness(),
                            folded.upstreamMouth(),
                            folded.upstreamEnd(),
                            folded.downstreamEnd(),
                            folded.downstreamMouth(),
                            folded.inletPitch(),
                            folded.outletPitch(),
                            0,
                            PleatEnds.PLUGGED);
                    // The printed plain column kept the leg angle of the stretch between the folds; R cos(theta) is
                    // what enters
                    double r = mediumResistance(row) * folded.legCosine() / plugged.legCosine();
                    return extrapolated(plugged, PleatClosure.PLAIN, r);
                });
    }

    @Test
    void defaultCellsStayWithinTheBandOfThe2dReference() {
        // Model error seen when the reference was made: plugged 0.6 %, folded or tapered 1.1 %, closure variations 1.5
        // %;
        // the errors of the reference itself (0.05 %) and of the cells (0.025 %) are small against it
        check(
                "R_cfd_per_m2",
                "pleat resistance of the usual cells against the 2-D reference",
                "model error found when the reference was made: plugged 0.6 %, folded or tapered 1.1 %, closure variations 1.5 %",
                row -> {
                    if (row.get("note").equals("sensitivity")) {
                        return 0.015;
                    }
                    return row.get("variant").equals("ideal") ? 0.006 : 0.011;
                },
                row -> perHeight(geometry(row), closure(row)).resistance(mediumResistance(row)));
    }

    @Test
    void closedFormStaysWithinTheBandOfThe2dReference() {
        check(
                "R_cfd_per_m2",
                "pleat resistance of parallel legs, closed form against the 2-D reference",
                "model error found when the reference was made: plugged 0.6 %, folded or tapered 1.1 %, closure variations 1.5 %",
                row -> {
                    if (!row.get("shape").equals("rect")) {
                        return Double.NaN;
                    }
                    if (row.get("note").equals("sensitivity")) {
                        return 0.015;
                    }
                    return row.get("variant").equals("ideal") ? 0.006 : 0.011;
                },
                row -> ParallelLegs.pleatResistance(geometry(row), closure(row), mediumResistance(row)));
    }

    @Test
    void defaultCellsAreWithinAFortiethOfAPercentOfTheLimit() {
        for (Map<String, String> row : ROWS) {
            double limit = extrapolated(row, closure(row));
            double usual = perHeight(geometry(row), closure(row)).resistance(mediumResistance(row));
            assertEquals(limit, usual, 2.5e-4 * limit, row.get("case"));
        }
    }

    @Test
    void errorFallsWithTheSquareOfTheCellSize() {
        for (Map<String, String> row : ROWS) {
            double r = mediumResistance(row);
            PleatGeometry pleat = geometry(row);
            double coarse = cells(pleat, closure(row), r, 100);
            double middle = cells(pleat, closure(row), r, 200);
            double fine = cells(pleat, closure(row), r, 400);
            // Order 2 means a ratio of 4; 1e-9 of the value is rounding in sums of this length
            double ratio = (coarse - middle) / (middle - fine);
            boolean rounding = Math.abs(middle - fine) < 1e-8 * fine;
            assertTrue(rounding || (ratio > 3.5 && ratio < 4.5), row.get("case") + ": ratio " + ratio);
        }
    }

    private interface RowValue {
        double of(Map<String, String> row);
    }

    private static void check(String column, String quantity, String reason, RowValue tolerance, RowValue model) {

        int checked = 0;
        for (Map<String, String> row : ROWS) {
            double band = tolerance.of(row);
            if (Double.isNaN(band)) {
                continue;
            }
            checked++;
            double expected = number(row, column);
            ExternalCheck check =
                    ExternalCheck.of(Topic.PLEATS, quantity, SOURCE).at(row.get("case"));
            (band > PRINTED ? check.toleranceSetAfterwards() : check)
                    .expected(expected, "1/m2")
                    .computed(model.of(row))
                    .withinRelative(band, reason);
        }
        assertTrue(checked > 40, "rows checked: " + checked);
    }

    private static double extrapolated(Map<String, String> row, PleatClosure closure) {
        return extrapolated(geometry(row), closure, mediumResistance(row));
    }

    private static double extrapolated(PleatGeometry pleat, PleatClosure closure, double r) {
        return (4 * cells(pleat, closure, r, 1600) - cells(pleat, closure, r, 800)) / 3;
    }

    private static double cells(PleatGeometry pleat, PleatClosure closure, double r, int count) {
        double[] uniform = new double[count];
        Arrays.fill(uniform, r);
        return perHeight(pleat, closure).solve(uniform).resistance();
    }

    private static PleatPack perHeight(PleatGeometry pleat, PleatClosure closure) {
        return new PleatPack(pleat, 1, 1).withClosure(closure);
    }

    private static double taper(Map<String, String> row) {
        return row.get("shape").equals("rect") ? 0 : 1;
    }

    private static double mediumResistance(Map<String, String> row) {
        return number(row, "t_m") / number(row, "k_m2");
    }

    private static PleatClosure closure(Map<String, String> row) {
        return new PleatClosure(
                number(row, "alpha_BJ"),
                number(row, "k_inplane_over_k"),
                !row.get("note").equals("folds impermeable"),
                1);
    }

    private static PleatGeometry geometry(Map<String, String> row) {
        return new PleatGeometry(
                number(row, "H_m"),
                number(row, "t_m"),
                number(row, "hu_mouth_m"),
                number(row, "hu_closed_m"),
                number(row, "hd_closed_m"),
                number(row, "hd_mouth_m"),
                number(row, "pitch_inlet_m"),
                number(row, "pitch_outlet_m"),
                0,
                row.get("variant").equals("full") ? PleatEnds.FOLDED : PleatEnds.PLUGGED);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
