package org.coldpleat.model.medium;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/** Mass per area of a sheet. */
public final class BasisWeight {
    private BasisWeight() {}

    /** Basis weight [kg/m2] of a strip of a mass [kg], length [m] and width [m]. */
    @Source("derived here: definition")
    public static double of(double mass, double length, double width) {
        Require.positive("mass", mass, "kg");
        Require.positive("length", length, "m");
        Require.positive("width", width, "m");
        return mass / (length * width);
    }
}
