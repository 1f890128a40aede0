package org.coldpleat.ui.service;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** The valve settings that are looked at unless others are asked for. */
@Source("common practice, no source: most settings of full-flow filters lie between 6 and 32 psi")
public final class UsualSettings {
    /** Lowest opening pressure. */
    public static final String FROM = "40 kPa";

    /** Highest opening pressure. */
    public static final String TO = "220 kPa";

    private UsualSettings() {}

    /** Lowest opening pressure [Pa]. */
    public static double from() {
        return pascal(FROM);
    }

    /** Highest opening pressure [Pa]. */
    public static double to() {
        return pascal(TO);
    }

    private static double pascal(String text) {
        return QuantityText.parse(text, Kind.PRESSURE_DIFFERENCE, Provenance.MEASURED)
                .value()
                .orElseThrow()
                .value();
    }
}
