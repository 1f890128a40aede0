package org.coldpleat.model.coldstart;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.source.Source;

/** Where a curve crosses 0 between two temperatures. */
public final class Crossing {
    private Crossing() {}

    /**
     * Closes in on a crossing until the stretch is shorter than the tolerance.
     *
     * @param curve any scale; NaN is no answer and ends the search where it stands
     * @param left colder end [K]
     * @param atLeft value there, not NaN
     * @param right warmer end [K], above left
     * @param atRight value there, not NaN, on the other side of 0
     * @param tolerance [K], above 0
     * @return middle of the last stretch [K]
     */
    @Source("Illinois variant of regula falsi (Dowell and Jarratt 1971, BIT 11, 168; from memory)")
    public static double between(
            DoubleUnaryOperator curve, double left, double atLeft, double right, double atRight, double tolerance) {
        double a = left;
        double fa = atLeft;
        double b = right;
        double fb = atRight;
        double nudge = 0.4 * tolerance;
        int side = 0;
        while (b - a > tolerance) {
            double x = Math.min(Math.max((a * fb - b * fa) / (fb - fa), a + nudge), b - nudge);
            double fx = curve.applyAsDouble(x);
            if (Double.isNaN(fx)) {
                break;
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
}
