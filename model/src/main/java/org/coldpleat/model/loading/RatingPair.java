package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * A rating as printed: so much is caught at and above a size.
 *
 * @param size [m], above 0
 * @param efficiency share caught [1], between 0 and 1, both excluded
 */
public record RatingPair(double size, double efficiency) {
    /** Efficiency that "nominal" stands for: a habit of the trade, no standard. */
    @Source("common practice, no source")
    public static final double NOMINAL = 0.5;

    /** Efficiency that "absolute" stands for (beta 75): a habit of the trade, no standard. */
    @Source("common practice, no source")
    public static final double ABSOLUTE = 1 - 1.0 / 75;

    public RatingPair {
        Require.positive("size", size, "m");
        if (!(efficiency > 0 && efficiency < 1)) {
            throw new IllegalArgumentException("efficiency must lie between 0 and 1 [1], was " + efficiency);
        }
    }

    /** A rating given as a filtration ratio [1], above 1. */
    public static RatingPair ofBeta(double size, double beta) {
        return new RatingPair(size, FiltrationRatio.efficiency(beta));
    }
}
