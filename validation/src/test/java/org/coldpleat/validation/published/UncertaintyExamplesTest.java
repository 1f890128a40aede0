package org.coldpleat.validation.published;

import java.util.List;
import org.coldpleat.model.bench.RobustFit;
import org.coldpleat.model.confidence.Model;
import org.coldpleat.model.confidence.Outcomes;
import org.coldpleat.model.confidence.Propagation;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.FirstOrder;
import org.junit.jupiter.api.Test;

/** Worked examples of the Guide to the Expression of Uncertainty in Measurement and its Supplement 1. */
class UncertaintyExamplesTest {
    private static final int DRAWS = 1 << 17;

    private static UncertainQuantity normal(String name, double value, double uncertainty) {
        return UncertainQuantity.of(
                name, Measured.exact(Kind.RATIO, value, Provenance.PUBLISHED).withSpread(uncertainty, Spread.NORMAL));
    }

    private static UncertainQuantity between(String name, double low, double high) {
        return UncertainQuantity.of(name, Measured.between(Kind.RATIO, low, high, Provenance.PUBLISHED));
    }

    private static Outcomes draw(Model model, List<UncertainQuantity> unknowns) {
        return Propagation.run(model, unknowns, DRAWS, 1, Progress.NONE)
                .orElseThrow()
                .outcomes(0);
    }

    /** JCGM 100:2008, H.1: end-gauge calibration, lengths in nm; l = 50 000 838 nm, u = 32 nm, nu_eff = 16 (truncated). */
    @Test
    void endGauge() {
        Model length = x -> new double[] {x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5])};
        List<UncertainQuantity> unknowns = List.of(
                normal("standard", 50_000_623, 25),
                normal("difference", 215, 9.7),
                normal("expansion", 11.5e-6, 1.2e-6),
                normal("temperature", -0.1, 0.41),
                normal("expansionDifference", 0, 0.58e-6),
                normal("temperatureDifference", 0, 0.029));
        FirstOrder result = FirstOrder.propagate(length, unknowns);
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: length", "JCGM 100:2008, H.1")
                .expected(50_000_838, "nm")
                .computed(result.answers()[0])
                .within(0.5, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: uncertainty", "JCGM 100:2008, H.1")
                .expected(32, "nm")
                .computed(result.standardUncertainty(0))
                .within(0.5, "half a unit of the last printed digit"); // printed to 1 nm
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the standard", "JCGM 100:2008, H.1")
                .expected(25, "nm")
                .computed(Math.abs(result.contributions()[0][0]))
                .within(0.05, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the difference", "JCGM 100:2008, H.1")
                .expected(9.7, "nm")
                .computed(Math.abs(result.contributions()[0][1]))
                .within(0.05, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the expansion", "JCGM 100:2008, H.1")
                .expected(0, "nm")
                .computed(result.contributions()[0][2])
                .within(1e-3, "vanishes to first order");
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the temperature", "JCGM 100:2008, H.1")
                .expected(0, "nm")
                .computed(result.contributions()[0][3])
                .within(1e-3, "vanishes to first order");
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the expansion difference", "JCGM 100:2008, H.1")
                .expected(2.9, "nm")
                .computed(Math.abs(result.contributions()[0][4]))
                .within(0.05, "half a unit of the last printed digit");
        // H.1.3.6 prints 16.6 nm; 0.029 K x 575 nm/K = 16.68 nm: the printed digit is truncated
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: share of the temperature difference", "JCGM 100:2008, H.1")
                .toleranceSetAfterwards()
                .expected(16.6, "nm")
                .computed(Math.abs(result.contributions()[0][5]))
                .within(0.1, "0.029 K x 575 nm/K = 16.68 nm: the printed digit is truncated");
        double exact = Double.POSITIVE_INFINITY;
        double nu = result.effectiveDegreesOfFreedom(0, new double[] {18, 25.6, exact, exact, 50, 2});
        ExternalCheck.of(Topic.CONFIDENCE, "end gauge: effective degrees of freedom, truncated", "JCGM 100:2008, H.1")
                .exactly("16", (int) Math.floor(nu));
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
        ExternalCheck.of(Topic.CONFIDENCE, "readings: correlation of voltage and current", "JCGM 100:2008, H.2")
                .expected(-0.36, "1")
                .computed(correlation[0][1])
                .within(0.005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "readings: correlation of voltage and phase", "JCGM 100:2008, H.2")
                .expected(0.86, "1")
                .computed(correlation[0][2])
                .within(0.005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "readings: correlation of current and phase", "JCGM 100:2008, H.2")
                .expected(-0.65, "1")
                .computed(correlation[1][2])
                .within(0.005, "half a unit of the last printed digit");
        Model impedance = x -> new double[] {x[0] / x[1] * Math.cos(x[2]), x[0] / x[1] * Math.sin(x[2]), x[0] / x[1]};
        FirstOrder result = FirstOrder.propagate(impedance, mean, uncertainty, correlation);
        // all to half a unit of the last printed digit
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: resistance", "JCGM 100:2008, H.2")
                .expected(127.732, "ohm")
                .computed(result.answers()[0])
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: reactance", "JCGM 100:2008, H.2")
                .expected(219.847, "ohm")
                .computed(result.answers()[1])
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: modulus", "JCGM 100:2008, H.2")
                .expected(254.260, "ohm")
                .computed(result.answers()[2])
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: uncertainty of the resistance", "JCGM 100:2008, H.2")
                .expected(0.071, "ohm")
                .computed(result.standardUncertainty(0))
                .within(0.0005, "half a unit of the last printed digit");
        // the printed 0.295 is cut, not rounded: the table's own readings give 0.2956 to first order
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: uncertainty of the reactance", "JCGM 100:2008, H.2")
                .toleranceSetAfterwards()
                .expected(0.295, "ohm")
                .computed(result.standardUncertainty(1))
                .within(0.001, "the print is cut, not rounded: its own readings give 0.2956");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: uncertainty of the modulus", "JCGM 100:2008, H.2")
                .expected(0.236, "ohm")
                .computed(result.standardUncertainty(2))
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: correlation of resistance and reactance", "JCGM 100:2008, H.2")
                .expected(-0.588, "1")
                .computed(result.correlation(0, 1))
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: correlation of resistance and modulus", "JCGM 100:2008, H.2")
                .expected(-0.485, "1")
                .computed(result.correlation(0, 2))
                .within(0.0005, "half a unit of the last printed digit");
        ExternalCheck.of(Topic.CONFIDENCE, "impedance: correlation of reactance and modulus", "JCGM 100:2008, H.2")
                .expected(0.993, "1")
                .computed(result.correlation(1, 2))
                .within(0.0005, "half a unit of the last printed digit");
    }

    /** JCGM 101:2008, 9.2.2, table 2 (from memory): sum of four standard normal quantities, u = 2.00, 95 % interval -3.92 to 3.92. */
    @Test
    void sumOfNormals() {
        Outcomes sum = draw(
                x -> new double[] {x[0] + x[1] + x[2] + x[3]},
                List.of(normal("a", 0, 1), normal("b", 0, 1), normal("c", 0, 1), normal("d", 0, 1)));
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four normals: deviation of the sum",
                        "JCGM 101:2008, 9.2.2, table 2 (from memory)")
                .expected(2.00, "1")
                .computed(sum.standardDeviation())
                .within(0.005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four normals: lower end of 95 %",
                        "JCGM 101:2008, 9.2.2, table 2 (from memory)")
                .expected(-3.92, "1")
                .computed(sum.low())
                .within(0.015, "half a printed unit plus the spread of a quantile of 131072 draws");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four normals: upper end of 95 %",
                        "JCGM 101:2008, 9.2.2, table 2 (from memory)")
                .expected(3.92, "1")
                .computed(sum.high())
                .within(0.015, "half a printed unit plus the spread of a quantile of 131072 draws");
    }

    /** JCGM 101:2008, 9.2.3, table 3 (from memory): sum of four rectangular quantities of unit deviation, -3.88 to 3.88. */
    @Test
    void sumOfRectangulars() {
        double w = Math.sqrt(3);
        Outcomes sum = draw(
                x -> new double[] {x[0] + x[1] + x[2] + x[3]},
                List.of(between("a", -w, w), between("b", -w, w), between("c", -w, w), between("d", -w, w)));
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four rectangulars: deviation of the sum",
                        "JCGM 101:2008, 9.2.3, table 3 (from memory)")
                .expected(2.00, "1")
                .computed(sum.standardDeviation())
                .within(0.005, "half a unit of the last printed digit");
        // tolerance: half a printed unit plus the spread of a quantile of 131072 draws
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four rectangulars: lower end of 95 %",
                        "JCGM 101:2008, 9.2.3, table 3 (from memory)")
                .expected(-3.88, "1")
                .computed(sum.low())
                .within(0.012, "half a printed unit plus the spread of a quantile of 131072 draws");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "four rectangulars: upper end of 95 %",
                        "JCGM 101:2008, 9.2.3, table 3 (from memory)")
                .expected(3.88, "1")
                .computed(sum.high())
                .within(0.012, "half a printed unit plus the spread of a quantile of 131072 draws");
    }

    /** JCGM 101:2008, 9.2.4 (from memory): three unit rectangulars and one ten times as wide; GUM interval 19.9, drawn 17.0. */
    @Test
    void sumWithOneDominantRectangular() {
        double w = Math.sqrt(3);
        Model model = x -> new double[] {x[0] + x[1] + x[2] + x[3]};
        List<UncertainQuantity> unknowns =
                List.of(between("a", -w, w), between("b", -w, w), between("c", -w, w), between("d", -10 * w, 10 * w));
        Outcomes sum = draw(model, unknowns);
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "one dominant rectangular: uncertainty, first order",
                        "JCGM 101:2008, 9.2.4 (from memory)")
                .expected(10.1, "1")
                .computed(FirstOrder.propagate(model, unknowns).standardUncertainty(0))
                .within(0.05, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "one dominant rectangular: lower end of 95 %",
                        "JCGM 101:2008, 9.2.4 (from memory)")
                .expected(-17.0, "1")
                .computed(sum.low())
                .within(0.06, "half a printed unit plus the spread of a quantile of 131072 draws");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "one dominant rectangular: upper end of 95 %",
                        "JCGM 101:2008, 9.2.4 (from memory)")
                .expected(17.0, "1")
                .computed(sum.high())
                .within(0.06, "half a printed unit plus the spread of a quantile of 131072 draws");
    }

    /**
     * JCGM 101:2008, 9.3: calibration of a weight against a standard (mass in mg), tables 5 and 6 (numbers from memory).
     * First order gives 0.0539 mg because the slope by air density vanishes at the best estimates; drawing gives 1.2341,
     * 0.0754, and 1.0834 to 1.3825 as the shortest 95 % interval.
     */
    @Test
    void massCalibration() {
        Model deviation = x -> new double[] {(x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000};
        List<UncertainQuantity> unknowns = List.of(
                normal("standard", 100_000.000, 0.050),
                normal("added", 1.234, 0.020),
                between("airDensity", 1.10, 1.30),
                between("weightDensity", 7000, 9000),
                between("standardDensity", 7950, 8050));
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "mass: uncertainty, first order",
                        "JCGM 101:2008, 9.3, tables 5 and 6 (numbers from memory)")
                .expected(0.0539, "mg")
                .computed(FirstOrder.propagate(deviation, unknowns).standardUncertainty(0))
                .within(0.00005, "half a unit of the last printed digit");
        Outcomes drawn = draw(deviation, unknowns);
        // last printed digit 0.0001 plus the sampling spread of the published run, which also had finite draws
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "mass: median drawn",
                        "JCGM 101:2008, 9.3, tables 5 and 6 (numbers from memory)")
                .expected(1.2341, "mg")
                .computed(drawn.median())
                .within(0.001, "last printed digit plus the sampling spread of the published run");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "mass: deviation drawn",
                        "JCGM 101:2008, 9.3, tables 5 and 6 (numbers from memory)")
                .expected(0.0754, "mg")
                .computed(drawn.standardDeviation())
                .within(0.0003, "last printed digit plus the sampling spread of the published run");
        double[] shortest = drawn.shortestInterval(0.95);
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "mass: lower end of the shortest 95 %",
                        "JCGM 101:2008, 9.3, tables 5 and 6 (numbers from memory)")
                .expected(1.0834, "mg")
                .computed(shortest[0])
                .within(0.004, "last printed digit plus the sampling spread of the published run");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "mass: upper end of the shortest 95 %",
                        "JCGM 101:2008, 9.3, tables 5 and 6 (numbers from memory)")
                .expected(1.3825, "mg")
                .computed(shortest[1])
                .within(0.004, "last printed digit plus the sampling spread of the published run");
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
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: intercept",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(-0.1712, "°C")
                .computed(line.parameters()[0])
                .within(0.00005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: slope",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(0.00218, "1")
                .computed(line.parameters()[1])
                .within(0.000005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: deviation of the intercept",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(0.0029, "°C")
                .computed(line.scatterUncertainty(0))
                .within(0.00005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: deviation of the slope",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(0.00067, "1")
                .computed(line.scatterUncertainty(1))
                .within(0.000005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: residual deviation",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(0.0035, "°C")
                .computed(line.scatter())
                .within(0.00005, "half a unit of the last printed digit");
        double[][] c = line.unscaled();
        double correlation = c[0][1] / Math.sqrt(c[0][0] * c[1][1]);
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: correlation",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(-0.930, "1")
                .computed(correlation)
                .within(0.0005, "half a unit of the last printed digit");
        double[] u = {line.scatterUncertainty(0), line.scatterUncertainty(1)};
        FirstOrder at30 =
                FirstOrder.propagate(y -> new double[] {y[0] + 10 * y[1]}, line.parameters(), u, new double[][] {
                    {1, correlation}, {correlation, 1}
                });
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: correction at 30 °C",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(-0.1494, "°C")
                .computed(at30.answers()[0])
                .within(0.00005, "half a unit of the last printed digit");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "thermometer: uncertainty at 30 °C",
                        "JCGM 100:2008, H.3 (readings from memory, they reproduce the print)")
                .expected(0.0041, "°C")
                .computed(at30.standardUncertainty(0))
                .within(0.00005, "half a unit of the last printed digit");
    }

    /**
     * JCGM 101:2008, 9.4.2.2 (from memory): comparison loss X1^2 + X2^2 of a power meter, both 0 with u = 0.005. First order gives no
     * uncertainty at all; the distribution is exponential: estimate 50e-6, u = 50e-6, shortest 95 % interval 0 to 150e-6.
     */
    @Test
    void comparisonLossAtZero() {
        Model loss = x -> new double[] {x[0] * x[0] + x[1] * x[1]};
        List<UncertainQuantity> unknowns = List.of(normal("real", 0, 0.005), normal("imaginary", 0, 0.005));
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "comparison loss: uncertainty, first order",
                        "JCGM 101:2008, 9.4.2.2 (from memory)")
                .expected(0, "1")
                .computed(FirstOrder.propagate(loss, unknowns).standardUncertainty(0))
                .within(1e-12, "vanishes to first order");
        Outcomes drawn = draw(loss, unknowns);
        ExternalCheck.of(Topic.CONFIDENCE, "comparison loss: median", "derived here")
                .expected(50e-6 * Math.log(2), "1")
                .computed(drawn.median())
                .within(
                        0.1e-6,
                        "sampling spread; the median is exact for this distribution"); // exact for this distribution
        ExternalCheck.of(Topic.CONFIDENCE, "comparison loss: deviation", "JCGM 101:2008, 9.4.2.2 (from memory)")
                .expected(50e-6, "1")
                .computed(drawn.standardDeviation())
                .within(0.5e-6, "sampling spread of 131072 draws");
        double[] shortest = drawn.shortestInterval(0.95);
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "comparison loss: lower end of the shortest 95 %",
                        "JCGM 101:2008, 9.4.2.2 (from memory)")
                .expected(0, "1")
                .computed(shortest[0])
                .within(0.1e-6, "sampling spread of 131072 draws");
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "comparison loss: upper end of the shortest 95 %",
                        "JCGM 101:2008, 9.4.2.2 (from memory)")
                .expected(150e-6, "1")
                .computed(shortest[1])
                .within(0.8e-6, "sampling spread of 131072 draws");
    }
}
