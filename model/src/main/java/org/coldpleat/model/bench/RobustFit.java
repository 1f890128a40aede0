package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.shared.source.Source;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Fits a curve to readings by least squares, if asked with Huber's weights so that a few bad readings do not carry the
 * answer away. Does not throw when it cannot converge: it says so.
 */
public final class RobustFit {
    /** Residual, in robust standard deviations, beyond which Huber's weight falls [1]. */
    @Source("Huber 1964, Ann. Math. Statist. 35:73; 1.345 gives 95 % efficiency for normal errors")
    private static final double HUBER_LIMIT = 1.345;

    /** Studentized residual beyond which a reading counts as an outlier [1]. */
    @Source("Iglewicz, Hoaglin 1993, How to Detect and Handle Outliers, ASQC: 3.5 (from memory)")
    private static final double OUTLIER_LIMIT = 3.5;

    /** Ratio of the standard deviation to the median absolute deviation of a normal distribution [1]. */
    private static final double MAD_TO_SIGMA = 1.4826;

    private static final int MAXIMUM_ITERATIONS = 2000;
    private static final int MAXIMUM_REWEIGHTS = 50;
    private static final double REWEIGHT_TOLERANCE = 1e-6;
    private static final double DIFFERENCE_STEP = 1e-3;

    private RobustFit() {}

    /** The curve to fit. */
    @FunctionalInterface
    public interface Curve {
        /** Value at a reading's predictors for given parameters. */
        double value(double[] predictors, double[] parameters);
    }

    /** How residuals count. */
    public enum Loss {
        /** Square of each residual. */
        LEAST_SQUARES,
        /** Square up to a limit, linear beyond. */
        HUBER
    }

    /**
     * Outcome of a fit.
     *
     * @param converged false if no minimum was found; then nothing else means anything
     * @param parameters estimates
     * @param unscaled inverse of the normal matrix of residuals in units of their stated uncertainty
     * @param scatter standard deviation of the residuals in units of their stated uncertainty [1]; 1 without spare
     *     readings
     * @param residuals reading less curve
     * @param weights Huber's weights [1], all 1 for least squares
     * @param leverages pull of each reading on its own fitted value [1], 0 to 1
     * @param outliers numbers of readings far off, from 0
     * @param degreesOfFreedom readings less parameters
     */
    public record Result(
            boolean converged,
            double[] parameters,
            double[][] unscaled,
            double scatter,
            double[] residuals,
            double[] weights,
            double[] leverages,
            List<Integer> outliers,
            int degreesOfFreedom) {
        /** Standard uncertainty from the scatter of the readings alone. */
        public double scatterUncertainty(int parameter) {
            return scatter * Math.sqrt(unscaled[parameter][parameter]);
        }

        /** Standard uncertainty from stated reading uncertainties, or from the scatter where that is larger. */
        public double standardUncertainty(int parameter) {
            return Math.max(1, scatter) * Math.sqrt(unscaled[parameter][parameter]);
        }
    }

    /**
     * Fits.
     *
     * @param curve the curve
     * @param predictors one row a reading
     * @param readings what was read
     * @param uncertainties standard uncertainty of each reading, above 0
     * @param start first guess of the parameters; its size also sets the scale of a parameter that passes through 0
     * @param loss how residuals count
     */
    @Source("Marquardt 1963, J. SIAM 11:431 (as in MINPACK, by Hipparchus); Huber 1981, Robust Statistics, 7.6 and 7.8")
    public static Result fit(
            Curve curve, double[][] predictors, double[] readings, double[] uncertainties, double[] start, Loss loss) {
        int count = readings.length;
        if (predictors.length != count || uncertainties.length != count || count < start.length) {
            throw new IllegalArgumentException("readings must be at least " + start.length
                    + " with as many predictors and uncertainties, had " + count);
        }
        for (double u : uncertainties) {
            if (!(u > 0)) {
                throw new IllegalArgumentException("uncertainty of a reading must be above 0, was " + u);
            }
        }
        Problem problem = new Problem(curve, predictors, readings, uncertainties, start);
        double[] weights = new double[count];
        Arrays.fill(weights, 1);
        double[] parameters = problem.minimize(start, weights);
        double scale = 1;
        for (int i = 0; parameters.length > 0 && loss == Loss.HUBER && i < MAXIMUM_REWEIGHTS; i++) {
            double[] residuals = problem.residuals(parameters);
            scale = robustScale(residuals, start.length);
            double change = 0;
            for (int k = 0; k < count; k++) {
                double weight = Math.min(1, HUBER_LIMIT * scale / Math.abs(residuals[k]));
                change = Math.max(change, Math.abs(weight - weights[k]));
                weights[k] = weight;
            }
            if (change < REWEIGHT_TOLERANCE) {
                break;
            }
            parameters = problem.minimize(parameters, weights);
        }
        return parameters.length == 0 ? failed(start) : summarize(problem, parameters, weights, scale, loss);
    }

    private static Result failed(double[] start) {
        int size = start.length;
        return new Result(
                false,
                start.clone(),
                new double[size][size],
                1,
                new double[0],
                new double[0],
                new double[0],
                List.of(),
                0);
    }

    private static double robustScale(double[] residuals, int parameters) {
        double[] sizes = Arrays.stream(residuals).map(Math::abs).sorted().toArray();
        int middle = sizes.length / 2;
        double median = sizes.length % 2 == 1 ? sizes[middle] : (sizes[middle - 1] + sizes[middle]) / 2;
        int free = Math.max(1, sizes.length - parameters);
        return Math.max(1, MAD_TO_SIGMA * median * Math.sqrt((double) sizes.length / free));
    }

    private static Result summarize(Problem problem, double[] parameters, double[] weights, double scale, Loss loss) {
        int count = weights.length;
        int size = parameters.length;
        double[] scaled = problem.residuals(parameters);
        RealMatrix jacobian = problem.jacobian(parameters);
        RealMatrix inverse = inverseNormal(jacobian);
        double[] leverages = new double[count];
        double[] residuals = new double[count];
        double squares = 0;
        int inside = 0;
        for (int i = 0; i < count; i++) {
            RealVector row = jacobian.getRowVector(i);
            leverages[i] = row.dotProduct(inverse.operate(row));
            residuals[i] = scaled[i] * problem.uncertainties[i];
            double counted = loss == Loss.HUBER
                    ? Math.max(-HUBER_LIMIT * scale, Math.min(HUBER_LIMIT * scale, scaled[i]))
                    : scaled[i];
            squares += counted * counted;
            inside += weights[i] >= 1 ? 1 : 0;
        }
        int free = count - size;
        double scatter = 1;
        if (free > 0) {
            double mean = Math.max(1, inside) / (double) count;
            double inflation = 1 + size * (1 - mean) / (count * mean);
            scatter = inflation / mean * Math.sqrt(squares / free);
        }
        List<Integer> outliers = new ArrayList<>();
        double spread = loss == Loss.HUBER ? scale : Math.max(1, scatter);
        for (int i = 0; i < count && free > 0; i++) {
            double studentized = Math.abs(scaled[i]) / (spread * Math.sqrt(Math.max(1e-12, 1 - leverages[i])));
            if (studentized > OUTLIER_LIMIT && weights[i] < 1) {
                outliers.add(i);
            }
        }
        return new Result(true, parameters, inverse.getData(), scatter, residuals, weights, leverages, outliers, free);
    }

    /** Inverse of J'J by singular values of the column-scaled J. */
    private static RealMatrix inverseNormal(RealMatrix jacobian) {
        int size = jacobian.getColumnDimension();
        double[] norms = new double[size];
        RealMatrix scaled = jacobian.copy();
        for (int j = 0; j < size; j++) {
            norms[j] = Math.max(Double.MIN_NORMAL, jacobian.getColumnVector(j).getNorm());
            scaled.setColumnVector(j, jacobian.getColumnVector(j).mapDivide(norms[j]));
        }
        SingularValueDecomposition svd = new SingularValueDecomposition(scaled);
        double[] inverseSquares =
                Arrays.stream(svd.getSingularValues()).map(s -> 1 / (s * s)).toArray();
        RealMatrix inverse = svd.getV()
                .multiply(MatrixUtils.createRealDiagonalMatrix(inverseSquares))
                .multiply(svd.getVT());
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                inverse.setEntry(i, j, inverse.getEntry(i, j) / (norms[i] * norms[j]));
            }
        }
        return inverse;
    }

    /** Readings and curve in units of the stated uncertainties. */
    private static final class Problem {
        private final Curve curve;
        private final double[][] predictors;
        private final double[] readings;
        private final double[] uncertainties;
        private final double[] start;

        Problem(Curve curve, double[][] predictors, double[] readings, double[] uncertainties, double[] start) {
            this.curve = curve;
            this.predictors = predictors;
            this.readings = readings;
            this.uncertainties = uncertainties;
            this.start = start;
        }

        double[] residuals(double[] parameters) {
            double[] residuals = new double[readings.length];
            for (int i = 0; i < residuals.length; i++) {
                residuals[i] = (readings[i] - curve.value(predictors[i], parameters)) / uncertainties[i];
            }
            return residuals;
        }

        /** Slopes by central differences of fourth order. */
        RealMatrix jacobian(double[] parameters) {
            double[][] slopes = new double[readings.length][parameters.length];
            for (int j = 0; j < parameters.length; j++) {
                double step = DIFFERENCE_STEP * Math.max(Math.abs(parameters[j]), 1e-3 * Math.abs(start[j]));
                step = step > 0 ? step : DIFFERENCE_STEP;
                int[] places = {-2, -1, 1, 2};
                int[] factors = {1, -8, 8, -1};
                for (int k = 0; k < places.length; k++) {
                    double[] moved = parameters.clone();
                    moved[j] += places[k] * step;
                    for (int i = 0; i < readings.length; i++) {
                        double share = factors[k] / (12 * step * uncertainties[i]);
                        slopes[i][j] += share * curve.value(predictors[i], moved);
                    }
                }
            }
            return new Array2DRowRealMatrix(slopes, false);
        }

        /** Parameters at the minimum; none if there is no convergence. */
        double[] minimize(double[] from, double[] weights) {
            double[] roots = Arrays.stream(weights).map(Math::sqrt).toArray();
            RealVector root = new ArrayRealVector(roots, false);
            LeastSquaresProblem weighted = new LeastSquaresBuilder()
                    .start(from)
                    .target(new double[readings.length])
                    .model(point -> {
                        double[] parameters = point.toArray();
                        RealVector value = new ArrayRealVector(residuals(parameters), false)
                                .mapMultiplyToSelf(-1)
                                .ebeMultiply(root);
                        RealMatrix slope = jacobian(parameters);
                        for (int i = 0; i < roots.length; i++) {
                            slope.setRowVector(i, slope.getRowVector(i).mapMultiply(roots[i]));
                        }
                        return new Pair<>(value, slope);
                    })
                    .maxEvaluations(MAXIMUM_ITERATIONS)
                    .maxIterations(MAXIMUM_ITERATIONS)
                    .build();
            for (double tolerance = 1e-13; tolerance < 1e-7; tolerance *= 100) {
                double[] found = minimize(weighted, tolerance);
                if (found.length > 0) {
                    return found;
                }
            }
            return new double[0];
        }

        private static double[] minimize(LeastSquaresProblem weighted, double tolerance) {
            try {
                double[] found = new LevenbergMarquardtOptimizer()
                        .withCostRelativeTolerance(tolerance)
                        .withParameterRelativeTolerance(tolerance)
                        .withOrthoTolerance(tolerance)
                        .optimize(weighted)
                        .getPoint()
                        .toArray();
                return Arrays.stream(found).allMatch(Double::isFinite) ? found : new double[0];
            } catch (MathRuntimeException tooStrict) {
                // the tolerance lies beyond rounding, or the limit of iterations was reached: the caller asks for less
                return new double[0];
            }
        }
    }
}
