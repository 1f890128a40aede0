package org.coldpleat.validation.analytic;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.Air;
import org.coldpleat.model.bench.AirTest;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Flow that spreads under the clamp of an air test, by finite differences of the Laplace equation. */
class ClampEdgeTest {
    private static final String SOURCE = "derived here";

    /**
     * Extra width, in sheet thicknesses, of the flow through a half-plane opening on both faces of a sheet of thickness 1.
     * By symmetry the mid-plane is at the mean pressure, so half the thickness is computed.
     */
    private static double extraWidth(int cells) {
        int rows = cells / 2;
        int columns = 6 * cells;
        int edge = 3 * cells;
        double[][] p = new double[columns + 1][rows + 1];
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                p[i][j] = i <= edge ? (double) j / rows : 0;
            }
        }
        double over = 2 / (1 + Math.sin(Math.PI / (2.0 * rows)));
        for (int sweep = 0; sweep < 40 * cells; sweep++) {
            for (int i = 0; i <= columns; i++) {
                for (int j = 1; j <= rows; j++) {
                    if (j == rows && i <= edge) {
                        continue;
                    }
                    double left = p[Math.max(i - 1, 0) + (i == 0 ? 1 : 0)][j];
                    double right = p[Math.min(i + 1, columns) - (i == columns ? 1 : 0)][j];
                    double up = j == rows ? p[i][j - 1] : p[i][j + 1];
                    p[i][j] += over * ((left + right + up + p[i][j - 1]) / 4 - p[i][j]);
                }
            }
        }
        double flux = 0;
        for (int i = 0; i <= columns; i++) {
            flux += p[i][1] * (i == 0 || i == columns ? 0.5 : 1);
        }
        // flux per width over half the thickness: uniform flow would give rows per cell column
        return (flux * rows - edge) / cells;
    }

    /** The singular edge makes the error fall as the cell size; extrapolated, the two grids agree to 1 %. */
    @Test
    void spreadIsLnTwoOverPi() {
        double coarse = extraWidth(16);
        double fine = extraWidth(32);
        double limit = 2 * fine - coarse;
        check("spread of air under a clamp, in sheet thicknesses, by finite differences")
                .expected(Math.log(2) / Math.PI, "1")
                .computed(limit)
                .withinRelative(0.01, "extrapolated, the two grids agree to 1 %");
    }

    /** The correction of the air test for a 60 mm opening on a 0.6 mm sheet, in-plane anisotropy root 1.5. */
    @Test
    void airTestAppliesTheSpread() {
        Air air = new Air(101_325, 1.82e-5, 1.2, 0.066e-6);
        List<AirTest.Row> rows = List.of(new AirTest.Row(200, 8e-4));
        List<AirTest.Row> leak = List.of(new AirTest.Row(200, 0));
        AirTest.Readings readings = new AirTest.Readings(
                rows,
                leak,
                Measured.exact(Kind.AREA, 0.0028, Provenance.MEASURED),
                Optional.of(0.06),
                Optional.of(0.6e-3),
                Optional.empty(),
                1,
                0.01,
                false);
        double edge =
                AirTest.evaluate(readings, air).correction("edge").orElseThrow().relativeSize();
        double widened = 0.06 + 2 * 1.5 * 0.6e-3 * Math.log(2) / Math.PI;
        check("correction of the air test for the spread")
                .expected(Math.pow(widened / 0.06, 2) - 1, "1")
                .computed(edge)
                .within(1e-12, "arithmetic");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.MEDIUM, quantity, SOURCE);
    }
}
