package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/** Filtration ratio, efficiency, and what a leak past the medium does to them. */
public final class FiltrationRatio {
    private FiltrationRatio() {}

    /** Efficiency {@code 1 - 1/beta} [1] of a filtration ratio beta, upstream over downstream count [1, at least 1]. */
    @Source("ISO 4548-12 and ISO 16889, definition of the filtration ratio, from memory")
    public static double efficiency(double beta) {
        if (!(beta >= 1)) {
            throw new IllegalArgumentException("beta must be at least 1 [1], was " + beta);
        }
        return 1 - 1 / beta;
    }

    /** Filtration ratio [1] of an efficiency [0..1]; infinite for 1. */
    public static double beta(double efficiency) {
        return 1 / (1 - Require.within("efficiency", efficiency, 0, 1, "1"));
    }

    /**
     * Filtration ratio of a filter with a leak, {@code beta / (1 + l (beta - 1))} [1]; never above {@code 1/l}.
     *
     * @param beta of the medium [1], at least 1
     * @param bypassShare l, share of the flow that goes round the medium [0..1]
     */
    @Source("derived here from the mass balance; topic of Tessman 1975, SAE 750846 (abstract only)")
    public static double withLeak(double beta, double bypassShare) {
        Require.atLeast("beta", beta, 1, "1");
        Require.within("bypassShare", bypassShare, 0, 1, "1");
        return beta / (1 + bypassShare * (beta - 1));
    }

    /** Efficiency of a filter with a leak, {@code (1 - l) E} [1]. */
    public static double efficiencyWithLeak(double efficiency, double bypassShare) {
        return (1 - Require.within("bypassShare", bypassShare, 0, 1, "1"))
                * Require.within("efficiency", efficiency, 0, 1, "1");
    }
}
