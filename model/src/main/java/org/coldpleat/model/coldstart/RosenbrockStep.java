package org.coldpleat.model.coldstart;

import java.util.Arrays;
import org.coldpleat.shared.source.Source;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.ode.AbstractIntegrator;
import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * One step of the Rosenbrock method RODAS: six stages, each with one evaluation of the rates and one linear system.
 *
 * @param start of the step
 * @param length [s]
 * @param increments of the stages, in the units of the state
 * @param end state at the end
 */
@Source("Hairer and Wanner 1996, Solving Ordinary Differential Equations II, 2nd ed., section VI.4, coefficients of "
        + "method RODAS with its continuous extension of order 3")
record RosenbrockStep(ODEStateAndDerivative start, double length, double[][] increments, double[] end) {
    static final int ORDER = 4;

    private static final double GAMMA = 0.25;
    private static final int STAGES = 6;

    /** Places of the stages in the step [1]. */
    private static final double[] PLACES = {0, 0.386, 0.21, 0.63, 1, 1};

    /** Weights of the rates' derivative by time [1]. */
    private static final double[] BY_TIME = {0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0};

    /** Weights of the earlier increments in the state of a stage [1]. */
    private static final double[][] STATE = {
        {},
        {1.544},
        {0.9466785280815826, 0.2557011698983284},
        {3.314825187068521, 2.896124015972201, 0.9986419139977817},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1},
    };

    /** Weights of the earlier increments, over the step, beside the rates [1]. */
    private static final double[][] SIDE = {
        {},
        {-5.6688},
        {-2.430093356833875, -0.2063599157091915},
        {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
        {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616},
        {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054},
    };

    /** Weights of the increments in the two shapes that bend the way between the ends [1]. */
    private static final double[][] BENDS = {
        {10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662},
        {-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872},
    };

    static RosenbrockStep take(
            AbstractIntegrator rates, ODEStateAndDerivative start, RateSlopes slopes, double length) {
        double[] state = start.getCompleteState();
        DecompositionSolver solver = slopes.leadingSolver(GAMMA * length);
        double[][] increments = new double[STAGES][];
        for (int stage = 0; stage < STAGES; stage++) {
            double[] rate = stage == 0
                    ? start.getCompleteDerivative()
                    : rates.computeDerivatives(
                            start.getTime() + PLACES[stage] * length, plus(state, STATE[stage], 1, increments));
            double[] side = plus(rate, SIDE[stage], 1 / length, increments);
            double timed = length * BY_TIME[stage];
            Arrays.setAll(side, i -> side[i] + timed * slopes.byTime()[i]);
            increments[stage] = solve(solver, slopes, GAMMA * length, side);
        }
        double[] end = plus(state, STATE[STAGES - 1], 1, increments);
        double[] last = increments[STAGES - 1];
        Arrays.setAll(end, i -> end[i] + last[i]);
        return new RosenbrockStep(start, length, increments, end);
    }

    private static double[] plus(double[] base, double[] weights, double factor, double[][] increments) {
        double[] sum = base.clone();
        for (int s = 0; s < weights.length; s++) {
            double weight = factor * weights[s];
            for (int i = 0; i < sum.length; i++) {
                sum[i] += weight * increments[s][i];
            }
        }
        return sum;
    }

    /** Solution of (1/diagonal - slopes) x = side; the rows below the leading ones follow from those. */
    private static double[] solve(DecompositionSolver solver, RateSlopes slopes, double diagonal, double[] side) {
        int leading = slopes.byState()[0].length;
        double[] first = solver.solve(new ArrayRealVector(side, 0, leading)).toArray();
        double[] solution = Arrays.copyOf(first, side.length);
        for (int i = leading; i < side.length; i++) {
            double sum = side[i];
            for (int j = 0; j < leading; j++) {
                sum += slopes.byState()[i][j] * first[j];
            }
            solution[i] = diagonal * sum;
        }
        return solution;
    }

    /** Difference to the embedded solution of order 3. */
    double[] error() {
        return increments[STAGES - 1];
    }

    /** The way from start to end. */
    RosenbrockInterpolator interpolator(ODEStateAndDerivative reached, EquationsMapper mapper) {
        double[] none = new double[end.length];
        return RosenbrockInterpolator.whole(
                start, reached, mapper, plus(none, BENDS[0], 1, increments), plus(none, BENDS[1], 1, increments));
    }
}
