package org.coldpleat.model.resolve.input;

import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;

/**
 * One uncertain input of a case.
 *
 * @param path field path, or for a model constant its name behind the path of its owner
 * @param candidate position of the candidate it belongs to; -1 if all candidates share it
 * @param value value with its spread
 * @param upwardOnly true if the true value can only lie above
 */
public record Unknown(String path, int candidate, Measured value, boolean upwardOnly) {
    /** Share of the value above which a spread is applied as a factor, so that a positive value stays positive [1]. */
    private static final double FACTOR_FROM = 0.3;

    /** True if all candidates share it. */
    public boolean shared() {
        return candidate < 0;
    }

    /**
     * The value moved by a number of standard uncertainties.
     *
     * @param deviations number of standard uncertainties [1]
     * @return moved value [SI]; a positive value stays positive
     */
    public double moved(double deviations) {
        double best = value.value();
        double uncertainty = value.standardUncertainty();
        if (value.spread() == Spread.LOG_NORMAL) {
            return best * Math.exp(deviations * value.halfWidth());
        }
        if (best > 0 && !upwardOnly && uncertainty > FACTOR_FROM * best) {
            return best * Math.exp(deviations * uncertainty / best);
        }
        return best + deviations * uncertainty;
    }
}
