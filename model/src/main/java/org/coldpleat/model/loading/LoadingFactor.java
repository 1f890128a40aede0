package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** How many times its clean resistance a filter may take before its bypass valve opens, in closed form. */
@Source("derived here")
@Validity("laminar filter at constant flow (hot), or laminar circuit under an ideal relief valve (cold)")
public final class LoadingFactor {
    private LoadingFactor() {}

    /**
     * Hot, at constant flow: opening pressure over the drop of the clean filter [1].
     *
     * @param openingPressure of the bypass valve [Pa], above 0
     * @param cleanDrop across the valve with a clean element [Pa], above 0
     */
    public static double hot(double openingPressure, double cleanDrop) {
        return Require.positive("openingPressure", openingPressure, "Pa")
                / Require.positive("cleanDrop", cleanDrop, "Pa");
    }

    /**
     * Cold, with the relief valve open: the ratio of filter to gallery resistance at which the valve opens, over the one
     * of the clean filter [1].
     *
     * @param criticalRatio opening over relief pressure left for the gallery [1], above 0
     * @param cleanRatio resistance of the clean filter over that of the gallery [1], above 0
     */
    public static double cold(double criticalRatio, double cleanRatio) {
        return Require.positive("criticalRatio", criticalRatio, "1") / Require.positive("cleanRatio", cleanRatio, "1");
    }
}
