package org.coldpleat.model.resolve.candidate;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.shared.source.Source;

/** Medium resistance of a pack whose resistance was read: the channel factor depends on the medium, so it is iterated. */
final class PackInverse {
    /** Least share of the pack resistance that must be left for the medium [1]; below it the channels explain all. */
    @Source("derived here: the reading then says nothing of the medium")
    private static final double LEAST_SHARE = 0.02;

    /** First upper end above the resistance without channels, in logarithms [1]. */
    private static final double MARGIN = 0.2;

    private static final BracketedRoot.Stop STOP = BracketedRoot.Stop.atValue(1e-9, 60);

    private PackInverse() {}

    /**
     * What a pack resistance says of the medium.
     *
     * @param mediumResistance [1/m]
     * @param slope d ln(pack) / d ln(medium) there [1], above 0 to 1
     * @param resolved false if channels alone explain the reading; the medium resistance is then an upper end only
     */
    record Medium(double mediumResistance, double slope, boolean resolved) {}

    /** Solves in logarithms. */
    static Medium of(PackModel pack, double packResistance) {
        double area = pack.effectiveArea();
        double high = Math.log(packResistance * area) + MARGIN;
        double low = high + Math.log(LEAST_SHARE);
        DoubleUnaryOperator excess = ln -> Math.log(pack.resistance(Math.exp(ln))) - Math.log(packResistance);
        double above = excess.applyAsDouble(high);
        double below = excess.applyAsDouble(low);
        if (below >= 0) {
            return new Medium(Math.exp(low), slope(pack, low), false);
        }
        while (above < 0) {
            high += MARGIN;
            above = excess.applyAsDouble(high);
        }
        double root = BracketedRoot.illinois(excess, low, below, high, above, STOP);
        return new Medium(Math.exp(root), slope(pack, root), true);
    }

    private static double slope(PackModel pack, double lnResistance) {
        double step = 1e-3;
        return Math.log(pack.resistance(Math.exp(lnResistance + step)) / pack.resistance(Math.exp(lnResistance - step)))
                / (2 * step);
    }
}
