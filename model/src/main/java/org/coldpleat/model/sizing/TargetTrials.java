package org.coldpleat.model.sizing;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.run.Design;
import org.coldpleat.model.run.ResolvedCase;

/**
 * Puts designs to a target.
 *
 * @param resolved case
 * @param duty position of the state of the target
 * @param margin target with the range of warmer oil
 */
record TargetTrials(ResolvedCase resolved, int duty, Margin margin) {
    /** A target missed by less than this counts as met [1]: well below the width of any band. */
    private static final double MET = 1e-4;

    private static final int CELLS = 24;
    private static final double FINE = 1e-7;
    private static final double COARSE = 1e-4;
    private static final double FIRST_STEP = 0.15;

    static TargetTrials of(ResolvedCase resolved, Target target) {
        return new TargetTrials(
                resolved, resolved.stateNames().indexOf(target.state()), new Margin(target, resolved.to()));
    }

    /** Margin of a design in the oil of the target and all warmer oil [1]. */
    double overall(Design design) {
        return margin.overall(design.in(resolved, duty));
    }

    /** True if a design meets the target. */
    boolean meets(Design design) {
        return margin.atTarget(design.in(resolved, duty)) >= -MET && overall(design) >= -MET;
    }

    /** Warmest open temperature of a design [K]; infinite if never or always, NaN without an answer. */
    double opening(Design design) {
        return design.in(resolved, duty).opening(resolved.from(), resolved.to());
    }

    /** All places at which the target begins or ceases to hold, on the best estimate. */
    Search.Found search(Design design, Lever lever) {
        return new Search(lever.lowest(), lever.highest(), CELLS, FINE).find(move -> overall(lever.move(design, move)));
    }

    /**
     * Move at which one draw begins to meet the target: first at the temperature of the target, then, should warmer oil be
     * worse, over all of it. Infinite beyond the ends of the lever, NaN without an answer.
     */
    double critical(Design design, Lever lever, double start) {
        Search search = new Search(lever.lowest(), lever.highest(), 1, COARSE);
        DoubleUnaryOperator whole = move -> overall(lever.move(design, move));
        double place = Math.max(lever.lowest(), Math.min(lever.highest(), start));
        double found = search.near(
                move -> margin.atTarget(lever.move(design, move).in(resolved, duty)), place, FIRST_STEP, true);
        if (Double.isNaN(found) || found == Double.POSITIVE_INFINITY) {
            return found;
        }
        double at = Math.max(lever.lowest(), found);
        double there = whole.applyAsDouble(at);
        boolean met = there >= -MET || (Double.isNaN(there) && Double.isInfinite(found));
        return met ? found : search.near(whole, at, FIRST_STEP, true);
    }
}
