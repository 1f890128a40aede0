package org.coldpleat.model.numerics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.ode.AbstractIntegrator;
import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * Derivatives of the rates at the start of a step, from one-sided differences.
 *
 * @param byState of each rate (first index) by each leading component
 * @param byTime of each rate [1/s]
 */
record RateSlopes(double[][] byState, double[] byTime) {
    /** Time over which the rates are followed for their derivative by time [s]. */
    private static final double AHEAD = 1e-6;

    /**
     * Derivatives at a state.
     *
     * @param leading components the rates depend on, the first ones [1]
     * @param difference of a leading component
     * @param timed whether the rates depend on the time as well
     */
    static RateSlopes at(
            AbstractIntegrator rates, ODEStateAndDerivative start, int leading, double difference, boolean timed) {
        double[] state = start.getCompleteState();
        double[] rate = start.getCompleteDerivative();
        double[][] byState = new double[state.length][leading];
        for (int j = 0; j < leading; j++) {
            double[] moved = state.clone();
            moved[j] += difference;
            double[] other = rates.computeDerivatives(start.getTime(), moved);
            for (int i = 0; i < state.length; i++) {
                byState[i][j] = (other[i] - rate[i]) / (moved[j] - state[j]);
            }
        }
        double[] byTime = new double[state.length];
        if (timed) {
            double later = start.getTime() + AHEAD;
            double[] other = rates.computeDerivatives(later, state);
            for (int i = 0; i < state.length; i++) {
                byTime[i] = (other[i] - rate[i]) / (later - start.getTime());
            }
        }
        return new RateSlopes(byState, byTime);
    }

    /** Solver of the leading rows of (1/diagonal - slopes) x = b, diagonal in [s]. */
    DecompositionSolver leadingSolver(double diagonal) {
        int leading = byState[0].length;
        double[][] matrix = new double[leading][leading];
        for (int i = 0; i < leading; i++) {
            for (int j = 0; j < leading; j++) {
                matrix[i][j] = (i == j ? 1 / diagonal : 0) - byState[i][j];
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver();
    }
}
