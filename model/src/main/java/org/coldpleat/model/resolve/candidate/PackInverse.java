package org.coldpleat.model.resolve.candidate;

import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.shared.source.Source;

/** Medium resistance of a pack whose resistance was read: the channel factor depends on the medium, so it is iterated. */
final class PackInverse {
    /** Least share of the pack resistance that must be left for the medium [1]; below it the channels explain all. */
    @Source("derived here: the reading then says nothing of the medium")
    private static final double LEAST_SHARE = 0.0244;

    /** Miss from which the last Newton step leaves an error of its square, in logarithms [1]. */
    private static final double NEAR = 1e-6;

    private PackInverse() {}

    /**
     * What a pack resistance says of the medium.
     *
     * @param mediumResistance [1/m]
     * @param slope d ln(pack) / d ln(medium) there [1], above 0 to 1
     * @param resolved false if channels alone explain the reading; the medium resistance is then an upper end only
     */
    record Medium(double mediumResistance, double slope, boolean resolved) {}

    /**
     * Solves in logarithms, by Newton's steps within bounds.
     *
     * @param packResistance as read [1/m3]
     * @param start medium resistance near the one looked for [1/m], above 0
     */
    static Medium of(PackCurve pack, double packResistance, double start) {
        double high = Math.log(packResistance * pack.effectiveArea());
        double low = high + Math.log(LEAST_SHARE);
        BracketedNewton newton = new BracketedNewton(low, high, Math.log(start));
        boolean known = false;
        while (true) {
            double at = newton.point();
            PackCurve.Point found = pack.at(Math.exp(at));
            double miss = Math.log(packResistance / found.resistance());
            double next = at + miss / found.slope();
            if (Math.abs(miss) < NEAR || newton.isExhausted()) {
                return new Medium(Math.exp(next), found.slope(), true);
            }
            if (next <= low && !known) {
                PackCurve.Point lowest = pack.at(Math.exp(low));
                if (lowest.resistance() >= packResistance) {
                    return new Medium(Math.exp(low), lowest.slope(), false);
                }
                known = true;
            }
            newton.stepTo(miss, next);
        }
    }
}
