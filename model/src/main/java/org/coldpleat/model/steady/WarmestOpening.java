package org.coldpleat.model.steady;

import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.numerics.GoldenSection;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Finds the warmest crossing alone, for many draws: walks from warm to cold on a coarse grid, each point started from its
 * neighbor, and closes in on the first crossing; follows every highest point below the limit that could still reach it.
 */
@Source("derived here: grid, Illinois variant of regula falsi on the logarithm of the ratio, golden section at the top")
@Validity(
        "a warm open interval narrower than the grid and far steeper than its surroundings would be missed; the full search "
                + "verifies a sample of draws")
public final class WarmestOpening {
    private static final int CELLS = 16;
    private static final BracketedRoot.Stop STOP = BracketedRoot.Stop.atWidth(1e-7);
    private static final double SMALLEST_RATIO = 1e-12;

    /** Stretch below which a highest point is not followed any further [K]. */
    private static final double FINEST = 0.1;

    private final StateSolver solver;
    private final double from;
    private final double to;
    private boolean unanswered;

    public WarmestOpening(StateModel model, double from, double to) {
        solver = model.heldShutSolver();
        this.from = from;
        this.to = to;
    }

    /** [K]; infinite if never or open at the warm end, NaN where a point has no answer. */
    public double find() {
        double step = (to - from) / CELLS;
        double[] values = new double[CELLS + 1];
        for (int i = CELLS; i >= 0; i--) {
            values[i] = look(from + i * step);
            if (Double.isNaN(values[i])) {
                return Double.NaN;
            }
            boolean open = values[i] > 0;
            if (open && i == CELLS) {
                return Double.POSITIVE_INFINITY;
            }
            if (i < CELLS && mayReach(values, i + 1)) {
                double found = overTheTop(from + (i + 1) * step, step, values[i + 1]);
                if (found != Double.NEGATIVE_INFINITY) {
                    return found;
                }
            }
            if (open) {
                return crossing(from + i * step, values[i], from + (i + 1) * step, values[i + 1]);
            }
        }
        return mayReach(values, 0) ? overTheTop(from, step, values[0]) : Double.NEGATIVE_INFINITY;
    }

    /**
     * Whether a grid point is a highest one, shut, and near enough to the limit that the curve, going on as steeply as to
     * its neighbors, could be open between them.
     */
    private static boolean mayReach(double[] values, int i) {
        double left = i > 0 ? values[i] - values[i - 1] : 0;
        double right = i < CELLS ? values[i] - values[i + 1] : 0;
        return values[i] <= 0 && left >= 0 && right >= 0 && values[i] + Math.max(left, right) > 0;
    }

    private double look(double temperature) {
        double value = Math.log(Math.max(SMALLEST_RATIO, solver.ratioAt(temperature)));
        unanswered |= Double.isNaN(value);
        return value;
    }

    /** Golden section about a highest grid point, until it is open or the stretch is short. */
    private double overTheTop(double grid, double step, double atGrid) {
        GoldenSection.Top top = GoldenSection.climb(
                this::look, Math.max(from, grid - step), grid, Math.min(to, grid + step), atGrid, FINEST, 0);
        if (Double.isNaN(top.value())) {
            return Double.NaN;
        }
        if (top.value() > 0) {
            double shut = Math.min(to, grid + step);
            return crossing(top.at(), top.value(), shut, look(shut));
        }
        return Double.NEGATIVE_INFINITY;
    }

    /** Crossing between an open and a warmer shut temperature [K]; NaN if a point on the way has no answer. */
    private double crossing(double open, double atOpen, double shut, double atShut) {
        unanswered = false;
        double found = BracketedRoot.illinois(this::look, open, atOpen, shut, atShut, STOP);
        return unanswered ? Double.NaN : found;
    }
}
