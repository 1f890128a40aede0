package org.coldpleat.model.circuit;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * All pressure-fed bearings together.
 *
 * @param conductance laminar flow times film viscosity over pressure [m3], at least 0; inverse of a resistance psi
 * @param sideFlow oil the turning journals pump out by themselves, per revolution [m3], at least 0
 * @param friction S, sum of {@code 2 pi R^3 L/c} over the bearings [m3], at least 0; film heat is {@code mu S omega^2}
 * @param metalConductance U from the films to the metal around them [W/K], at least 0
 * @param filmPosition f0, where between inlet and outlet temperature a film stands that exchanges nothing with the metal [1]: 1/2,
 *     up to 1 where oil is mixed back; 0 for films as cold as the sump whatever happens
 */
@Source("film balance derived here; Petroff's law for the friction")
public record Bearings(
        double conductance, double sideFlow, double friction, double metalConductance, double filmPosition) {
    /** Position of a film in which nothing is mixed back [1]. */
    public static final double UNMIXED = 0.5;

    /** No bearings. */
    public static final Bearings NONE = new Bearings(0, 0, 0, 0, 0);

    public Bearings {
        Require.notNegative("conductance", conductance, "m3");
        Require.notNegative("sideFlow", sideFlow, "m3/rev");
        Require.notNegative("friction", friction, "m3");
        Require.notNegative("metalConductance", metalConductance, "W/K");
        Require.within("filmPosition", filmPosition, 0, 1, "1");
    }

    /** Bearings of a conductance [m3] whose films have the temperature of the sump and pump no oil. */
    public static Bearings isothermal(double conductance) {
        return new Bearings(conductance, 0, 0, 0, 0);
    }

    /** These bearings and others side by side; conductances add, the film position of the first counts. */
    public Bearings plus(Bearings other) {
        return new Bearings(
                conductance + other.conductance,
                sideFlow + other.sideFlow,
                friction + other.friction,
                metalConductance + other.metalConductance,
                filmPosition);
    }

    /** Whether the film temperature differs from the sump's at all. */
    boolean isWarm() {
        return filmPosition > 0 && (conductance > 0 || sideFlow > 0);
    }
}
