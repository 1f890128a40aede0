package org.coldpleat.model.run;

import org.coldpleat.model.numerics.StandardNormal;

/** Chances of normally distributed values. */
final class Chance {
    private Chance() {}

    /** Chance that a normal value of this mean and standard uncertainty is above 0 [1]. */
    static double above(double mean, double sigma) {
        if (sigma == 0) {
            return mean > 0 ? 1 : 0;
        }
        return StandardNormal.probability(mean / sigma);
    }
}
