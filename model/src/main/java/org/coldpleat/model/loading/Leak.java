package org.coldpleat.model.loading;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * Flow that goes round the medium during a test.
 *
 * @param cleanShare share of the filter flow that leaks past the clean element [0..1, below 1]
 * @param kind how the share changes while the element loads
 */
public record Leak(double cleanShare, Kind kind) {
    /** No leak. */
    public static final Leak NONE = new Leak(0, Kind.CONSTANT_SHARE);

    /** How the share of a leak behaves. */
    public enum Kind {
        /** The share stays what it was: the textbook case with a closed solution. */
        CONSTANT_SHARE,
        /** A laminar gap beside the medium: the leak flow follows the pressure drop, its share grows with loading. */
        LAMINAR_GAP
    }

    public Leak {
        Objects.requireNonNull(kind, "kind");
        Require.within("cleanShare", cleanShare, 0, 1, "1");
        Require.positive("share through the medium", 1 - cleanShare, "1");
    }

    /** Share of the flow that leaks [0..1] once the medium resists {@code resistanceRatio} [1] times its clean value. */
    public double bypassShare(double resistanceRatio) {
        if (kind == Kind.CONSTANT_SHARE || cleanShare == 0) {
            return cleanShare;
        }
        if (resistanceRatio == Double.POSITIVE_INFINITY) {
            return 1;
        }
        double odds = cleanShare / (1 - cleanShare) * resistanceRatio;
        return odds / (1 + odds);
    }

    /**
     * Pressure drop at constant total flow over that of the clean element [1]: the medium carries {@code (1 - l)/(1 -
     * l0)} of its clean flow.
     */
    public double pressureRatio(double resistanceRatio) {
        if (kind == Kind.LAMINAR_GAP && cleanShare > 0 && resistanceRatio == Double.POSITIVE_INFINITY) {
            return 1 / cleanShare;
        }
        return resistanceRatio * (1 - bypassShare(resistanceRatio)) / (1 - cleanShare);
    }
}
