package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.shared.source.Source;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

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

    private static final int MAXIMUM_REWEIGHTS = 50;
    private static final double REWEIGHT_TOLERANCE = 1e-6;

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
        FitProblem problem = new FitProblem(curve, predictors, readings, uncertainties, start);
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
        return parameters.length == 0
                ? failed(start)
                : summarize(problem, uncertainties, parameters, weights, scale, loss);
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

    private static Result summarize(
            FitProblem problem,
            double[] uncertainties,
            double[] parameters,
            double[] weights,
            double scale,
            Loss loss) {
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
            residuals[i] = scaled[i] * uncertainties[i];
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
}
