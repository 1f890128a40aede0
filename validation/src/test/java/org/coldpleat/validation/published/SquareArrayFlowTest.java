package org.coldpleat.validation.published;

import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * Solves the flow across a square array afresh, so that the table the laws are held against does not rest on memory:
 * biharmonic stream function in odd sines with no slip on the fiber, symmetry of the cell by least squares.
 */
class SquareArrayFlowTest {
    private static final String SOURCE =
            "flow solved afresh, derived here; Sangani, Acrivos 1982 print 102.90 and 532.55 at 0.3 and 0.5";

    private static final int TERMS = 20;
    private static final int POINTS = 160;

    /** Radial part of a basis function and of its Laplacian, each with slope; fiber radius 1. */
    private record Radial(int order, double value, double slope, double laplacian, double laplacianSlope) {
        static Radial of(int term, double r) {
            int n = 2 * (term / 2) + 1;
            boolean first = term % 2 == 0;
            if (n == 1 && first) {
                return new Radial(
                        1, r * Math.log(r) - r / 2 + 0.5 / r, Math.log(r) + 0.5 - 0.5 / (r * r), 2 / r, -2 / (r * r));
            }
            if (n == 1) {
                return new Radial(1, r * r * r - 2 * r + 1 / r, 3 * r * r - 2 - 1 / (r * r), 8 * r, 8);
            }
            double in = Math.pow(r, n);
            double out = 1 / in;
            double mixed = first ? -n : -(n + 1);
            double decay = first ? n - 1 : n;
            double grow = first ? in : in * r * r;
            double growSlope = first ? n * in / r : (n + 2) * in * r;
            double value = grow + decay * out + mixed * out * r * r;
            double slope = growSlope - n * decay * out / r + (2 - n) * mixed * out * r;
            double laplacian = mixed * (4 - 4 * n) * out + (first ? 0 : (4 * n + 4) * in);
            double laplacianSlope = -n * mixed * (4 - 4 * n) * out / r + (first ? 0 : n * (4 * n + 4) * in / r);
            return new Radial(n, value, slope, laplacian, laplacianSlope);
        }

        double along(double r, double angle, double part, double partSlope) {
            return partSlope * Math.cos(angle) * Math.sin(order * angle)
                    - part / r * order * Math.cos(order * angle) * Math.sin(angle);
        }
    }

    private static double drag(double solidity) {
        double half = Math.sqrt(Math.PI / (4 * solidity));
        double corner = half * Math.sqrt(2);
        double[][] rows = new double[4 * POINTS][2 * TERMS];
        double[] right = new double[4 * POINTS];
        for (int term = 0; term < 2 * TERMS; term++) {
            double scale = 1 / Math.abs(Radial.of(term, corner).value());
            for (int i = 0; i < POINTS; i++) {
                double place = half * (i + 0.5) / POINTS;
                double r = Math.hypot(place, half);
                double top = Math.atan2(half, place);
                double side = Math.atan2(place, half);
                Radial radial = Radial.of(term, r);
                // Top of the cell is a streamline without shear; at its side no cross flow and even vorticity
                rows[4 * i][term] = scale * radial.value() * Math.sin(radial.order() * top);
                rows[4 * i + 1][term] = scale * half * radial.laplacian() * Math.sin(radial.order() * top);
                rows[4 * i + 2][term] = scale * half * radial.along(r, side, radial.value(), radial.slope());
                rows[4 * i + 3][term] =
                        scale * half * half * radial.along(r, side, radial.laplacian(), radial.laplacianSlope());
                right[4 * i] = half;
            }
        }
        double[] solution = new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();
        // Drag is 4 pi times the coefficient of r ln r, the only term with a net force
        return 4 * Math.PI * solution[0] / Math.abs(Radial.of(0, corner).value());
    }

    @Test
    void freshSolutionConfirmsTheTable() {
        // Sangani and Acrivos 1982, table 1: 102.90 at 0.3 (converged 102.88), 532.55 at 0.5
        for (Map<String, String> row : TableRows.read(SquareArrayFlowTest.class, "periodic_arrays.csv")) {
            double solidity = Double.parseDouble(row.get("solidity"));
            if (row.get("square_converged").isEmpty() || solidity > 0.55) {
                continue;
            }
            double converged = Double.parseDouble(row.get("square_converged"));
            // 20 orders: truncation below 1e-6 up to 0.5; the table holds eight digits
            check("drag of square arrays, table against a fresh solution")
                    .at("solidity " + solidity)
                    .expected(converged, "1")
                    .computed(drag(solidity))
                    .withinRelative(1e-6, "truncation of 20 orders is below this up to 0.5");
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.MEDIUM, quantity, SOURCE);
    }
}
