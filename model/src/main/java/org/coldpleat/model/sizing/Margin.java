package org.coldpleat.model.sizing;

import org.coldpleat.model.steady.DesignState;
import org.coldpleat.model.steady.LowestPoint;
import org.coldpleat.shared.source.Source;

/**
 * How far a design is on the right side of a target: above 0 the target holds. Continuous, so that a root is where it
 * begins to hold.
 *
 * @param target target
 * @param to warmest oil temperature looked at [K], above that of the target
 */
@Source(
        "derived here: logarithm of valve ratio or pressure, difference of shares; grid and golden section to warmer oil")
record Margin(Target target, double to) {
    private static final double STEP = 4;
    private static final double FINEST = 0.05;

    /** A margin as bad as this or worse is not told apart [1]. */
    static final double WORST = -50;

    Margin {
        if (!(to > target.temperature())) {
            throw new IllegalArgumentException(
                    "to must be above the temperature of the target, " + target.temperature() + " K, was " + to);
        }
    }

    /** Margin at the temperature of the target alone [1]. */
    double atTarget(DesignState state) {
        return at(state, target.temperature());
    }

    /** Least margin at the temperature of the target and in all warmer oil [1]. */
    double overall(DesignState state) {
        int cells = (int) Math.ceil((to - target.temperature()) / STEP);
        double step = (to - target.temperature()) / cells;
        double[] values = new double[cells + 1];
        int least = 0;
        for (int i = 0; i <= cells; i++) {
            values[i] = at(state, target.temperature() + i * step);
            if (Double.isNaN(values[i])) {
                return Double.NaN;
            }
            if (values[i] < values[least]) {
                least = i;
            }
        }
        boolean flat = values[least] == values[Math.min(cells, least + 1)];
        if (flat || values[least] <= WORST) {
            return values[least];
        }
        double low = target.temperature() + Math.max(0, least - 1) * step;
        double high = target.temperature() + Math.min(cells, least + 1) * step;
        return LowestPoint.near(
                x -> at(state, x), low, target.temperature() + least * step, high, values[least], FINEST);
    }

    private double at(DesignState state, double temperature) {
        double margin = switch (target.kind()) {
            case NEVER_OPEN, OPENS_BELOW -> state.hasValve() ? -Math.log(state.valveRatio(temperature)) : -WORST;
            case SHARE_BELOW -> target.limit() - state.bypassShare(temperature);
            case ELEMENT_BELOW -> Math.log(target.limit() / state.elementDrop(temperature));
        };
        return Double.isNaN(margin) ? margin : Math.max(WORST, Math.min(-WORST, margin));
    }
}
