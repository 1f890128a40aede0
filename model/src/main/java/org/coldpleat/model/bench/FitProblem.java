package org.coldpleat.model.bench;

import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Readings and curve in units of the stated uncertainties. */
final class FitProblem {
    private static final int MAXIMUM_ITERATIONS = 2000;
    private static final double DIFFERENCE_STEP = 1e-3;

    private final RobustFit.Curve curve;
    private final double[][] predictors;
    private final double[] readings;
    private final double[] uncertainties;
    private final double[] start;

    FitProblem(
            RobustFit.Curve curve, double[][] predictors, double[] readings, double[] uncertainties, double[] start) {
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
