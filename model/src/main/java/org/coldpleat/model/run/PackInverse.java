package org.coldpleat.model.run;

import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.shared.source.Source;

/** Medium resistance of a pack whose resistance was read: the channel factor depends on the medium, so it is iterated. */
final class PackInverse {
    /** Least share of the pack resistance that must be left for the medium [1]; below it the channels explain all. */
    @Source("derived here: the reading then says nothing of the medium")
    private static final double LEAST_SHARE = 0.02;

    private static final double TOLERANCE = 1e-9;
    private static final int MOST_STEPS = 60;

    private PackInverse() {}

    /**
     * What a pack resistance says of the medium.
     *
     * @param mediumResistance [1/m]
     * @param slope d ln(pack) / d ln(medium) there [1], above 0 to 1
     * @param resolved false if channels alone explain the reading; the medium resistance is then an upper end only
     */
    record Medium(double mediumResistance, double slope, boolean resolved) {}

    /** Solves by regula falsi (Illinois) in logarithms. */
    static Medium of(PackModel pack, double packResistance) {
        double area = pack.solve(1e8).effectiveArea();
        double wanted = Math.log(packResistance);
        double high = Math.log(packResistance * area) + 0.2;
        double low = high + Math.log(LEAST_SHARE);
        double above = Math.log(pack.resistance(Math.exp(high))) - wanted;
        double below = Math.log(pack.resistance(Math.exp(low))) - wanted;
        if (below >= 0) {
            return new Medium(Math.exp(low), slope(pack, low), false);
        }
        double middle = high;
        int side = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            middle = (low * above - high * below) / (above - below);
            double at = Math.log(pack.resistance(Math.exp(middle))) - wanted;
            if (Math.abs(at) < TOLERANCE) {
                break;
            }
            if (at > 0) {
                high = middle;
                above = at;
                below = side == 1 ? below / 2 : below;
                side = 1;
            } else {
                low = middle;
                below = at;
                above = side == -1 ? above / 2 : above;
                side = -1;
            }
        }
        return new Medium(Math.exp(middle), slope(pack, middle), true);
    }

    private static double slope(PackModel pack, double lnResistance) {
        double step = 1e-3;
        return Math.log(pack.resistance(Math.exp(lnResistance + step)) / pack.resistance(Math.exp(lnResistance - step)))
                / (2 * step);
    }
}
