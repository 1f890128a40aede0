package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coldpleat.model.bench.RobustFit;
import org.coldpleat.model.confidence.FirstOrder;
import org.coldpleat.model.confidence.Model;
import org.coldpleat.model.confidence.Outcomes;
import org.coldpleat.model.confidence.Progress;
import org.coldpleat.model.confidence.Propagation;
import org.coldpleat.model.confidence.Unknown;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

/** Worked examples of the Guide to the Expression of Uncertainty in Measurement and its Supplement 1. */
class UncertaintyExamplesTest {
    private static final int DRAWS = 1 << 17;

    private static Unknown normal(String name, double value, double uncertainty) {
        return Unknown.of(
                name, Measured.exact(Kind.RATIO, value, Provenance.PUBLISHED).withSpread(uncertainty, Spread.NORMAL));
    }

    private static Unknown between(String name, double low, double high) {
        return Unknown.of(name, Measured.between(Kind.RATIO, low, high, Provenance.PUBLISHED));
    }

    private static Outcomes draw(Model model, List<Unknown> unknowns) {
        return Propagation.run(model, unknowns, DRAWS, 1, Progress.NONE)
                .orElseThrow()
                .outcomes(0);
    }

    /** JCGM 100:2008, H.1: end-gauge calibration, lengths in nm; l = 50 000 838 nm, u = 32 nm, nu_eff = 16 (truncated). */
    @Test
    void endGauge() {
        Model length = x -> new double[] {x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5])};
        List<Unknown> unknowns = List.of(
                normal("standard", 50_000_623, 25),
                normal("difference", 215, 9.7),
                normal("expansion", 11.5e-6, 1.2e-6),
                normal("temperature", -0.1, 0.41),
                normal("expansionDifference", 0, 0.58e-6),
                normal("temperatureDifference", 0, 0.029));
        FirstOrder result = FirstOrder.propagate(length, unknowns);
        assertEquals(50_000_838, result.answers()[0], 0.5);
        assertEquals(32, result.standardUncertainty(0), 0.5); // printed to 1 nm
        assertEquals(25, Math.abs(result.contributions()[0][0]), 0.05);
        assertEquals(9.7, Math.abs(result.contributions()[0][1]), 0.05);
        assertEquals(0, result.contributions()[0][2], 1e-3);
        assertEquals(0, result.contributions()[0][3], 1e-3);
        assertEquals(2.9, Math.abs(result.contributions()[0][4]), 0.05);
        // H.1.3.6 prints 16.6 nm; 0.029 K x 575 nm/K = 16.68 nm: the printed digit is truncated
        assertEquals(16.6, Math.abs(result.contributions()[0][5]), 0.1);
        double exact = Double.POSITIVE_INFINITY;
        double nu = result.effectiveDegreesOfFreedom(0, new double[] {18, 25.6, exact, exact, 50, 2});
        assertEquals(16, Math.floor(nu));
    }

    /**
     * JCGM 100:2008, H.2: resistance, reactance and impedance from five simultaneous readings of voltage, current and
     * phase (table H.2); correlations r(V,I) = -0.36, r(V,phi) = 0.86, r(I,phi) = -0.65; results in table H.4.
     */
    @Test
    void resistanceAndReactance() {
        double[][] readings = {
            {5.007, 4.994, 5.005, 4.990, 4.999},
            {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
            {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
        };
        double[] mean = new double[3];
        double[][] product = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (double v : readings[i]) {
                mean[i] += v / 5;
            }
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 5; k++) {
                    product[i][j] += (readings[i][k] - mean[i]) * (readings[j][k] - mean[j]) / (5 * 4);
                }
            }
        }
        double[] uncertainty = new double[3];
        double[][] correlation = new double[3][3];
        for (int i = 0; i < 3; i++) {
            uncertainty[i] = Math.sqrt(product[i][i]);
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                correlation[i][j] = product[i][j] / (uncertainty[i] * uncertainty[j]);
            }
        }
        assertEquals(-0.36, correlation[0][1], 0.005);
        assertEquals(0.86, correlation[0][2], 0.005);
        assertEquals(-0.65, correlation[1][2], 0.005);
        Model impedance = x -> new double[] {x[0] / x[1] * Math.cos(x[2]), x[0] / x[1] * Math.sin(x[2]), x[0] / x[1]};
        FirstOrder result = FirstOrder.propagate(impedance, mean, uncertainty, correlation);
        // all to half a unit of the last printed digit
        assertEquals(127.732, result.answers()[0], 0.0005);
        assertEquals(219.847, result.answers()[1], 0.0005);
        assertEquals(254.260, result.answers()[2], 0.0005);
        assertEquals(0.071, result.standardUncertainty(0), 0.0005);
        // the printed 0.295 is cut, not rounded: the table's own readings give 0.2956 to first order
        assertEquals(0.295, result.standardUncertainty(1), 0.001);
        assertEquals(0.236, result.standardUncertainty(2), 0.0005);
        assertEquals(-0.588, result.correlation(0, 1), 0.0005);
        assertEquals(-0.485, result.correlation(0, 2), 0.0005);
        assertEquals(0.993, result.correlation(1, 2), 0.0005);
    }

    /** JCGM 101:2008, 9.2.2, table 2: sum of four standard normal quantities, u = 2.00, 95 % interval -3.92 to 3.92. */
    @Test
    void sumOfNormals() {
        Outcomes sum = draw(
                x -> new double[] {x[0] + x[1] + x[2] + x[3]},
                List.of(normal("a", 0, 1), normal("b", 0, 1), normal("c", 0, 1), normal("d", 0, 1)));
        assertEquals(2.00, sum.standardDeviation(), 0.005);
        assertEquals(-3.92, sum.low(), 0.015);
        assertEquals(3.92, sum.high(), 0.015);
    }

    /** JCGM 101:2008, 9.2.3, table 3: sum of four rectangular quantities of unit deviation, -3.88 to 3.88. */
    @Test
    void sumOfRectangulars() {
        double w = Math.sqrt(3);
        Outcomes sum = draw(
                x -> new double[] {x[0] + x[1] + x[2] + x[3]},
                List.of(between("a", -w, w), between("b", -w, w), between("c", -w, w), between("d", -w, w)));
        assertEquals(2.00, sum.standardDeviation(), 0.005);
        // tolerance: half a printed unit plus the spread of a quantile of 131072 draws
        assertEquals(-3.88, sum.low(), 0.012);
        assertEquals(3.88, sum.high(), 0.012);
    }

    /** JCGM 101:2008, 9.2.4: three unit rectangulars and one ten times as wide; GUM interval 19.9, drawn 17.0. */
    @Test
    void sumWithOneDominantRectangular() {
        double w = Math.sqrt(3);
        Model model = x -> new double[] {x[0] + x[1] + x[2] + x[3]};
        List<Unknown> unknowns =
                List.of(between("a", -w, w), between("b", -w, w), between("c", -w, w), between("d", -10 * w, 10 * w));
        Outcomes sum = draw(model, unknowns);
        assertEquals(10.1, FirstOrder.propagate(model, unknowns).standardUncertainty(0), 0.05);
        assertEquals(-17.0, sum.low(), 0.06);
        assertEquals(17.0, sum.high(), 0.06);
    }

    /**
     * JCGM 101:2008, 9.3: calibration of a weight against a standard (mass in mg), tables 5 and 6 (numbers from memory).
     * First order gives 0.0539 mg because the slope by air density vanishes at the best estimates; drawing gives 1.2341,
     * 0.0754, and 1.0834 to 1.3825 as the shortest 95 % interval.
     */
    @Test
    void massCalibration() {
        Model deviation = x -> new double[] {(x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000};
        List<Unknown> unknowns = List.of(
                normal("standard", 100_000.000, 0.050),
                normal("added", 1.234, 0.020),
                between("airDensity", 1.10, 1.30),
                between("weightDensity", 7000, 9000),
                between("standardDensity", 7950, 8050));
        assertEquals(0.0539, FirstOrder.propagate(deviation, unknowns).standardUncertainty(0), 0.00005);
        Outcomes drawn = draw(deviation, unknowns);
        // last printed digit 0.0001 plus the sampling spread of the published run, which also had finite draws
        assertEquals(1.2341, drawn.median(), 0.001);
        assertEquals(0.0754, drawn.standardDeviation(), 0.0003);
        double[] shortest = drawn.shortestInterval(0.95);
        assertEquals(1.0834, shortest[0], 0.004);
        assertEquals(1.3825, shortest[1], 0.004);
    }

    /**
     * JCGM 100:2008, H.3: calibration line of a thermometer, correction b = y1 + y2 (t - 20 degC), readings of table H.6
     * (from memory; they reproduce the printed results): y1 = -0.1712 degC, y2 = 0.00218, s(y1) = 0.0029, s(y2) =
     * 0.00067, r = -0.930, s = 0.0035; at 30 degC b = -0.1494 with u = 0.0041.
     */
    @Test
    void thermometerCalibrationLine() {
        double[] t = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511};
        double[] b = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160};
        double[][] x = new double[t.length][];
        double[] ones = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            x[i] = new double[] {t[i] - 20};
            ones[i] = 1;
        }
        RobustFit.Result line = RobustFit.fit(
                (u, y) -> y[0] + y[1] * u[0], x, b, ones, new double[] {-0.1, 0.01}, RobustFit.Loss.LEAST_SQUARES);
        // half a unit of each last printed digit
        assertEquals(-0.1712, line.parameters()[0], 0.00005);
        assertEquals(0.00218, line.parameters()[1], 0.000005);
        assertEquals(0.0029, line.scatterUncertainty(0), 0.00005);
        assertEquals(0.00067, line.scatterUncertainty(1), 0.000005);
        assertEquals(0.0035, line.scatter(), 0.00005);
        double[][] c = line.unscaled();
        double correlation = c[0][1] / Math.sqrt(c[0][0] * c[1][1]);
        assertEquals(-0.930, correlation, 0.0005);
        double[] u = {line.scatterUncertainty(0), line.scatterUncertainty(1)};
        FirstOrder at30 =
                FirstOrder.propagate(y -> new double[] {y[0] + 10 * y[1]}, line.parameters(), u, new double[][] {
                    {1, correlation}, {correlation, 1}
                });
        assertEquals(-0.1494, at30.answers()[0], 0.00005);
        assertEquals(0.0041, at30.standardUncertainty(0), 0.00005);
    }

    /**
     * JCGM 101:2008, 9.4.2.2: comparison loss X1^2 + X2^2 of a power meter, both 0 with u = 0.005. First order gives no
     * uncertainty at all; the distribution is exponential: estimate 50e-6, u = 50e-6, shortest 95 % interval 0 to 150e-6.
     */
    @Test
    void comparisonLossAtZero() {
        Model loss = x -> new double[] {x[0] * x[0] + x[1] * x[1]};
        List<Unknown> unknowns = List.of(normal("real", 0, 0.005), normal("imaginary", 0, 0.005));
        assertEquals(0, FirstOrder.propagate(loss, unknowns).standardUncertainty(0), 1e-12);
        Outcomes drawn = draw(loss, unknowns);
        assertEquals(50e-6 * Math.log(2), drawn.median(), 0.1e-6); // exact for this distribution
        assertEquals(50e-6, drawn.standardDeviation(), 0.5e-6);
        double[] shortest = drawn.shortestInterval(0.95);
        assertEquals(0, shortest[0], 0.1e-6);
        assertEquals(150e-6, shortest[1], 0.8e-6);
    }
}
