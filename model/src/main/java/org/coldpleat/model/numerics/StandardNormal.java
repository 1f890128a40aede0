package org.coldpleat.model.numerics;

import org.coldpleat.shared.source.Source;
import org.hipparchus.special.Erf;

/** The normal distribution of mean 0 and standard deviation 1. */
@Source("error function and its inverse, textbook; as in Hipparchus")
public final class StandardNormal {
    private static final double ROOT_TWO = Math.sqrt(2);

    private StandardNormal() {}

    /** Share of the distribution below a score [1]. */
    public static double probability(double score) {
        return 0.5 * Erf.erfc(-score / ROOT_TWO);
    }

    /**
     * Score that a share of the distribution lies below: the quantile [1]; accurate also far out in both tails.
     *
     * @param probability 0 to 1; the ends give infinite scores
     */
    public static double score(double probability) {
        return probability < 0.5
                ? -ROOT_TWO * Erf.erfcInv(2 * probability)
                : ROOT_TWO * Erf.erfcInv(2 * (1 - probability));
    }
}
