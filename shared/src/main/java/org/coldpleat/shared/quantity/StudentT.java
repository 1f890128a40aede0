package org.coldpleat.shared.quantity;

import org.coldpleat.shared.source.Source;

/** Two-sided quantiles of Student's t distribution for whole degrees of freedom. */
final class StudentT {
    private static final int BISECTIONS = 200;

    private StudentT() {}

    /**
     * The t [1] for which a share of the distribution lies between -t and t.
     *
     * @param share between 0 and 1, both excluded
     * @param degreesOfFreedom at least 1
     */
    static double twoSided(double share, int degreesOfFreedom) {
        if (!(share > 0 && share < 1) || degreesOfFreedom < 1) {
            throw new IllegalArgumentException(
                    "share must lie between 0 and 1 and degreesOfFreedom be at least 1, were " + share + " and "
                            + degreesOfFreedom);
        }
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (shareWithin(middle, degreesOfFreedom) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(degreesOfFreedom) * Math.tan((low + high) / 2);
    }

    /** Share between -t and t, with theta = atan(t/sqrt(nu)). */
    @Source("Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.7.3 and 26.7.4")
    private static double shareWithin(double theta, int nu) {
        double cosine = Math.cos(theta);
        double term = nu % 2 == 1 ? cosine : 1;
        double sum = nu == 1 ? 0 : term;
        for (int k = nu % 2 == 1 ? 3 : 2; k <= nu - 2; k += 2) {
            term *= cosine * cosine * (k - 1) / k;
            sum += term;
        }
        return nu % 2 == 1 ? 2 / Math.PI * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
    }
}
