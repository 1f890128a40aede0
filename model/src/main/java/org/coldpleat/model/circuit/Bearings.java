package org.coldpleat.model.circuit;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * All pressure-fed bearings together.
 *
 * @param conductance laminar flow times film viscosity over pressure [m3], at least 0; inverse of a resistance psi
 * @param sideFlow oil the turning journals pump out by themselves, per revolution [m3], at least 0
 * @param friction S, sum of {@code 2 pi R^3 L/c} over the bearings [m3], at least 0; film heat is {@code mu S omega^2}
 * @param heatLoss UA from the films to the engine [W/K], at least 0
 * @param filmPosition f, where between inlet and outlet temperature the film is taken [1], 0 to 1
 */
@Source("film balance derived here; Petroff's law for the friction; f = 0.5 common practice")
public record Bearings(double conductance, double sideFlow, double friction, double heatLoss, double filmPosition) {
    /** No bearings. */
    public static final Bearings NONE = new Bearings(0, 0, 0, 0, 0);

    public Bearings {
        Require.notNegative("conductance", conductance, "m3");
        Require.notNegative("sideFlow", sideFlow, "m3/rev");
        Require.notNegative("friction", friction, "m3");
        Require.notNegative("heatLoss", heatLoss, "W/K");
        Require.within("filmPosition", filmPosition, 0, 1, "1");
    }

    /** Bearings of a conductance [m3] whose films have the temperature of the sump and pump no oil. */
    public static Bearings isothermal(double conductance) {
        return new Bearings(conductance, 0, 0, 0, 0);
    }

    /** These bearings and others side by side; heat loss adds, the film position of the first counts. */
    public Bearings plus(Bearings other) {
        return new Bearings(
                conductance + other.conductance,
                sideFlow + other.sideFlow,
                friction + other.friction,
                heatLoss + other.heatLoss,
                filmPosition);
    }

    /** Whether the film temperature differs from the sump's at all. */
    boolean isWarm() {
        return filmPosition > 0 && (conductance > 0 || sideFlow > 0);
    }
}
