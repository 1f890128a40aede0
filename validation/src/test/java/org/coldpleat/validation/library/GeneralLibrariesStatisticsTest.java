package org.coldpleat.validation.library;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.coldpleat.model.bench.RobustFit;
import org.coldpleat.model.confidence.Outcomes;
import org.coldpleat.model.confidence.SobolDraws;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** The same statistics by Apache Commons Math 3.6.1, a library apart from the one the model uses. */
class GeneralLibrariesStatisticsTest {
    private static final String SOURCE = "Apache Commons Math 3.6.1";

    private static double curve(double x, double[] p) {
        return p[0] * x + p[1] * x * x + p[2] * Math.exp(-x);
    }

    /** Minimum and covariance of a nonlinear fit; both stop near rounding, so 1e-8 relative. */
    @Test
    void leastSquaresMinimumAndCovariance() {
        SplittableRandom random = new SplittableRandom(4);
        int count = 30;
        double[][] x = new double[count][1];
        double[] y = new double[count];
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        for (int i = 0; i < count; i++) {
            x[i][0] = 0.2 * (i + 1);
            y[i] = curve(x[i][0], new double[] {3, 0.4, 2}) + 0.1 * random.nextGaussian();
        }
        double[] start = {1, 1, 1};
        RobustFit.Result ours =
                RobustFit.fit((u, p) -> curve(u[0], p), x, y, ones, start, RobustFit.Loss.LEAST_SQUARES);
        LeastSquaresOptimizer.Optimum theirs = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(y)
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(
                                p -> Arrays.stream(x)
                                        .mapToDouble(u -> curve(u[0], p))
                                        .toArray(),
                                p -> Arrays.stream(x)
                                        .map(u -> new double[] {u[0], u[0] * u[0], Math.exp(-u[0])})
                                        .toArray(double[][]::new))
                        .build());
        for (int i = 0; i < 3; i++) {
            check("parameters of a nonlinear fit")
                    .at("p" + i)
                    .expected(theirs.getPoint().getEntry(i), "1")
                    .computed(ours.parameters()[i])
                    .within(1e-8, "both stop near rounding");
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                check("covariance of a nonlinear fit")
                        .at(i + "," + j)
                        .expected(theirs.getCovariances(1e-14).getEntry(i, j), "1")
                        .computed(ours.unscaled()[i][j])
                        .within(1e-8, "both stop near rounding");
            }
        }
    }

    /** Leverages and residual standard error of a linear fit against ordinary least squares by QR. */
    @Test
    void leveragesOfALine() {
        double[][] x = {{1, 0}, {1, 1}, {1, 2}, {1, 3}, {1, 10}};
        double[] y = {1, 2.9, 5.2, 7.1, 21};
        RobustFit.Result ours = RobustFit.fit(
                (u, p) -> p[0] * u[0] + p[1] * u[1],
                x,
                y,
                new double[] {1, 1, 1, 1, 1},
                new double[] {1, 1},
                RobustFit.Loss.LEAST_SQUARES);
        OLSMultipleLinearRegression theirs = new OLSMultipleLinearRegression();
        theirs.setNoIntercept(true);
        theirs.newSampleData(y, x);
        double[] hat = new double[5];
        for (int i = 0; i < 5; i++) {
            hat[i] = theirs.calculateHat().getEntry(i, i);
        }
        assertArrayEquals(hat, ours.leverages(), 1e-9);
        check("residual deviation of a linear fit")
                .expected(theirs.estimateRegressionStandardError(), "1")
                .computed(ours.scatter())
                .within(1e-9, "arithmetic");
        double[] errors = theirs.estimateRegressionParametersStandardErrors();
        check("deviation of the first parameter of a linear fit")
                .expected(errors[0], "1")
                .computed(ours.scatterUncertainty(0))
                .within(1e-9, "arithmetic");
        check("deviation of the second parameter of a linear fit")
                .expected(errors[1], "1")
                .computed(ours.scatterUncertainty(1))
                .within(1e-9, "arithmetic");
    }

    @Test
    void intervalsOfRepeats() {
        for (int n : List.of(2, 3, 5, 10, 30)) {
            double[] readings = new double[n];
            Arrays.setAll(readings, i -> 10 + i);
            double expected = new TDistribution(n - 1).inverseCumulativeProbability(0.975)
                    * new StandardDeviation().evaluate(readings)
                    / Math.sqrt(n);
            String text = Arrays.stream(readings).mapToObj(Double::toString).collect(Collectors.joining("; "));
            Measured ours = QuantityText.parse("[" + text + "] m", Kind.LENGTH, Provenance.MEASURED)
                    .value()
                    .orElseThrow();
            check("half-width of the 95 % interval of repeats")
                    .at(n + " repeats")
                    .expected(expected, "m")
                    .computed(ours.high() - ours.value())
                    .withinRelative(1e-7, "quantile of the other library");
        }
    }

    @Test
    void normalQuantilesDownToFarTails() {
        UncertainQuantity unknown = UncertainQuantity.of(
                "z", Measured.exact(Kind.RATIO, 0, Provenance.MEASURED).withSpread(1, Spread.NORMAL));
        NormalDistribution normal = new NormalDistribution(0, 1);
        for (double p : new double[] {1e-12, 1e-6, 0.001, 0.025, 0.3, 0.5, 0.7, 0.975, 0.999, 1 - 1e-9}) {
            check("normal quantile")
                    .at("p " + p)
                    .expected(normal.inverseCumulativeProbability(p), "1")
                    .computed(unknown.quantile(p))
                    .within(1e-8, "rounding in the far tails");
        }
    }

    /** Definition 5 of Hyndman and Fan 1996, Am. Stat. 50:361, is the one used. */
    @Test
    void quantilesAndDeviationOfDraws() {
        List<Double> drawn = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 501; i++) {
            drawn.add(random.nextGaussian());
        }
        double[] values = drawn.stream().mapToDouble(Double::doubleValue).toArray();
        Outcomes ours = Outcomes.of(values);
        Percentile theirs = new Percentile().withEstimationType(Percentile.EstimationType.R_5);
        for (double p : new double[] {0.001, 0.025, 0.25, 0.5, 0.9, 0.975}) {
            check("quantile of draws, definition 5 of Hyndman, Fan 1996")
                    .at("p " + p)
                    .expected(theirs.evaluate(values, 100 * p), "1")
                    .computed(ours.quantile(p))
                    .within(1e-12, "arithmetic");
        }
        check("deviation of draws")
                .expected(new StandardDeviation().evaluate(values), "1")
                .computed(ours.standardDeviation())
                .within(1e-12, "arithmetic");
    }

    /**
     * Nested scrambling keeps the number of leading binary digits any two points share in a coordinate. Checked against
     * the unscrambled sequence of the other library for all pairs of 128 points, far from the start too.
     */
    @Test
    void scrambledPointsKeepTheNetOfTheSobolSequence() {
        int dimension = 24;
        int count = 128;
        int first = 5000;
        SobolSequenceGenerator plain = new SobolSequenceGenerator(dimension);
        SobolDraws draws = new SobolDraws(dimension, 77);
        double[][] theirs = new double[count][];
        double[][] ours = new double[count][];
        for (int i = 0; i < first; i++) {
            plain.nextVector();
        }
        for (int i = 0; i < count; i++) {
            theirs[i] = plain.nextVector();
            ours[i] = draws.point(first + i);
        }
        for (int j = 0; j < dimension; j++) {
            for (int a = 0; a < count; a++) {
                for (int b = 0; b < a; b++) {
                    assertEquals(
                            sharedDigits(theirs[a][j], theirs[b][j]), sharedDigits(ours[a][j], ours[b][j]), "in " + j);
                }
            }
        }
    }

    private static int sharedDigits(double u, double v) {
        long different = (long) (u * 0x1p32) ^ (long) (v * 0x1p32);
        return Math.min(32, Long.numberOfLeadingZeros(different) - 32);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CONFIDENCE, quantity, SOURCE);
    }
}
