package org.coldpleat.model.numerics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Closes in on a root of a function between two places where it has opposite signs. Nothing is asked of the function
 * besides: no slope, no monotony; with several roots between the places one of them is found.
 *
 * <p>{@link #illinois} takes the values at both ends as known, asks for few values and stops at a place without an answer;
 * {@link #brent} needs fewer still where a root is wanted to near rounding, and works out both ends itself.
 */
public final class BracketedRoot {
    /** Least way of a point from the ends of the stretch, as a share of the width that is narrow enough [1]. */
    private static final double NUDGE = 0.4;

    private static final int BRENT_ORDER = 5;
    private static final int BRENT_EVALUATIONS = 100;

    private BracketedRoot() {}

    /**
     * When a search is done.
     *
     * @param width stretch that is narrow enough [unit of the place], at least 0; its middle is then the root
     * @param value size of the function that is small enough [unit of the function], at least 0; the place is then the root
     * @param most values asked for, at least 1
     */
    public record Stop(double width, double value, int most) {
        public Stop {
            Require.notNegative("width", width, "unit of the place");
            Require.notNegative("value", value, "unit of the function");
            if (most < 1) {
                throw new IllegalArgumentException("most must be at least 1, was " + most);
            }
        }

        /** Done once the root is known to so much [unit of the place], above 0. */
        public static Stop atWidth(double width) {
            return new Stop(Require.positive("width", width, "unit of the place"), 0, Integer.MAX_VALUE);
        }

        /** Done once the function is smaller than this [unit of the function], above 0, or after so many values. */
        public static Stop atValue(double value, int most) {
            return new Stop(0, Require.positive("value", value, "unit of the function"), most);
        }
    }

    /**
     * Root by regula falsi that halves the value at an end which stays.
     *
     * @param function NaN is no answer and ends the search where it stands
     * @param left lower end
     * @param atLeft value there, not NaN
     * @param right upper end, above left
     * @param atRight value there, not NaN, on the other side of 0
     * @param stop when the search is done
     * @return the last point if its value is small enough, else the middle of the last stretch
     */
    @Source("Illinois variant of regula falsi (Dowell and Jarratt 1971, BIT 11, 168; from memory)")
    public static double illinois(
            DoubleUnaryOperator function, double left, double atLeft, double right, double atRight, Stop stop) {
        double a = left;
        double fa = atLeft;
        double b = right;
        double fb = atRight;
        double nudge = NUDGE * stop.width();
        int side = 0;
        for (int i = 0; i < stop.most() && b - a > stop.width(); i++) {
            double x = Math.min(Math.max((a * fb - b * fa) / (fb - fa), a + nudge), b - nudge);
            double fx = function.applyAsDouble(x);
            if (Double.isNaN(fx)) {
                break;
            }
            if (Math.abs(fx) < stop.value()) {
                return x;
            }
            if (fx > 0 == fb > 0) {
                b = x;
                fb = fx;
                fa = side == -1 ? 0.5 * fa : fa;
                side = -1;
            } else {
                a = x;
                fa = fx;
                fb = side == 1 ? 0.5 * fb : fb;
                side = 1;
            }
        }
        return 0.5 * (a + b);
    }

    /**
     * Root by inverse interpolation of higher order.
     *
     * @param function of opposite signs at the ends, or 0 at one of them
     * @param left lower end
     * @param right upper end, above left
     * @param width stretch that is narrow enough [unit of the place], above 0
     * @return the root; empty if a point on the way has no answer (NaN) or the ends lie on one side of 0
     */
    @Source("bracketing method of Brent with inverse polynomials up to order 5, as in Hipparchus")
    public static OptionalDouble brent(DoubleUnaryOperator function, double left, double right, double width) {
        try {
            double root = new BracketingNthOrderBrentSolver(0, width, 0, BRENT_ORDER)
                    .solve(BRENT_EVALUATIONS, function::applyAsDouble, left, right);
            return Double.isNaN(root) ? OptionalDouble.empty() : OptionalDouble.of(root);
        } catch (MathRuntimeException noAnswer) {
            return OptionalDouble.empty();
        }
    }
}
