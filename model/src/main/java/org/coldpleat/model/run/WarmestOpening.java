package org.coldpleat.model.run;

import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Finds the warmest crossing alone, for many draws: walks from warm to cold on a coarse grid, each point started from its
 * neighbor, and closes in on the first crossing; if the valve is shut at every grid point, follows the highest one.
 */
@Source("derived here: grid, Illinois variant of regula falsi on the logarithm of the ratio, parabola at the top")
@Validity("a warm open interval narrower than the grid and far from its highest point would be missed; the full search "
        + "verifies a sample of draws")
final class WarmestOpening {
    private static final int CELLS = 16;
    private static final double TOLERANCE = 1e-3;
    private static final double SMALLEST_RATIO = 1e-12;
    private static final int REFINEMENTS = 4;

    /** A top further below the limit than this cannot reach it between two grid points of a smooth curve [1]. */
    private static final double OUT_OF_REACH = 0.1;

    private final DutyModel model;
    private final double from;
    private final double to;
    private Optional<OperatingPoint> near = Optional.empty();

    WarmestOpening(DutyModel model, double from, double to) {
        this.model = model;
        this.from = from;
        this.to = to;
    }

    /** [K]; infinite if never or open at the warm end, NaN where a point has no answer. */
    double find() {
        double step = (to - from) / CELLS;
        double[] values = new double[CELLS + 1];
        int top = CELLS;
        for (int i = CELLS; i >= 0; i--) {
            values[i] = look(from + i * step);
            if (Double.isNaN(values[i])) {
                return Double.NaN;
            }
            if (values[i] > 0) {
                return i == CELLS
                        ? Double.POSITIVE_INFINITY
                        : crossing(from + i * step, values[i], from + (i + 1) * step, values[i + 1]);
            }
            top = values[i] > values[top] ? i : top;
        }
        boolean inside = top > 0 && top < CELLS;
        return inside && values[top] > -OUT_OF_REACH
                ? overTheTop(from + top * step, step, values[top - 1], values[top], values[top + 1])
                : Double.NEGATIVE_INFINITY;
    }

    private double look(double temperature) {
        SolvedPoint point = model.heldShutAt(temperature, near);
        near = StateAnalysis.near(point);
        return point.isAnswer() ? Math.log(Math.max(SMALLEST_RATIO, model.ratio(point))) : Double.NaN;
    }

    /** Parabolas through three points with the highest in the middle, until one is open or they are close together. */
    private double overTheTop(double middle, double step, double atLeft, double atMiddle, double atRight) {
        double b = middle;
        double h = step;
        double left = atLeft;
        double top = atMiddle;
        double right = atRight;
        for (int k = 0; k < REFINEMENTS; k++) {
            double bend = left - 2 * top + right;
            double shift = bend < 0 ? 0.5 * h * (left - right) / bend : 0;
            b += Math.max(-h, Math.min(h, shift));
            h /= 4;
            top = look(b);
            if (top > 0) {
                return crossing(b, top, to, look(to));
            }
            left = look(b - h);
            right = look(b + h);
            if (left > 0 || right > 0) {
                double open = right > 0 ? b + h : b - h;
                return crossing(open, right > 0 ? right : left, to, look(to));
            }
            if (Double.isNaN(left + top + right)) {
                return Double.NaN;
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    private double crossing(double open, double atOpen, double shut, double atShut) {
        double a = open;
        double fa = atOpen;
        double b = shut;
        double fb = atShut;
        int side = 0;
        while (b - a > TOLERANCE) {
            double x = Math.min(Math.max((a * fb - b * fa) / (fb - fa), a + 0.4 * TOLERANCE), b - 0.4 * TOLERANCE);
            double fx = look(x);
            if (Double.isNaN(fx)) {
                return Double.NaN;
            }
            if (fx > 0) {
                a = x;
                fa = fx;
                fb = side == 1 ? 0.5 * fb : fb;
                side = 1;
            } else {
                b = x;
                fb = fx;
                fa = side == -1 ? 0.5 * fa : fa;
                side = -1;
            }
        }
        return 0.5 * (a + b);
    }
}
