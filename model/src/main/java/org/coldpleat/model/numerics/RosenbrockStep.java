package org.coldpleat.model.numerics;

import java.util.Arrays;
import org.coldpleat.shared.source.Source;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.ode.AbstractIntegrator;
import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;

/**
 * One step of the Rosenbrock method RODASP: six stages, each with one evaluation of the rates and one linear system.
 *
 * @param start of the step
 * @param length [s]
 * @param increments of the stages, in the units of the state
 * @param end state at the end
 */
@Source(
        "Steinebach 1995, Order-reduction of ROW-methods for DAEs and method of lines applications, Preprint 1741, TH "
                + "Darmstadt; stages as in Hairer and Wanner 1996, Solving Ordinary Differential Equations II, 2nd ed., section IV.7")
record RosenbrockStep(ODEStateAndDerivative start, double length, double[][] increments, double[] end) {
    static final int ORDER = 4;

    private static final double GAMMA = 0.25;
    private static final int STAGES = 6;

    /** Places of the stages in the step [1]. */
    private static final double[] PLACES = {0, 0.75, 0.21, 0.63, 1, 1};

    /** Weights of the rates' derivative by time [1]. */
    private static final double[] BY_TIME = {0.25, -0.5, -0.023504, -0.0362, 0, 0};

    /** Weights of the earlier increments in the state of a stage [1]. */
    private static final double[][] STATE = {
        {},
        {3},
        {1.831036793486759, 0.4955183967433795},
        {2.304376582692669, -0.05249275245743001, -1.176798761832782},
        {-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401},
        {-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401, 1},
    };

    /** Weights of the earlier increments, over the step, beside the rates [1]. */
    private static final double[][] SIDE = {
        {},
        {-12},
        {-8.791795173947035, -2.207865586973518},
        {10.81793056857153, 6.780270611428266, 19.5348594464241},
        {34.19095006749676, 15.49671153725963, 54.7476087596413, 14.16005392148534},
        {34.62605830930532, 15.30084976114473, 56.99955578662667, 18.40807009793095, -5.714285714285717},
    };

    /** Weights of the increments in the two shapes that bend the way between the ends [1]. */
    private static final double[][] BENDS = {
        {25.09876703708589, 11.62013104361867, 28.49148307714626, -5.664021568594133, 0},
        {1.638054557396973, -0.7373619806678748, 8.47791821923899, 15.9925314877952, -1.882352941176471},
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
