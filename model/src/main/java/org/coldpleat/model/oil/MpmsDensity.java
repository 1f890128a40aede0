package org.coldpleat.model.oil;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Density of a lubricating oil at atmospheric pressure:
 * {@code rho = rho15 exp(-e (1 + 0.8 e))}, {@code e = alpha (t - 15)}, {@code alpha = 0.6278 / rho15}, t in degrees C.
 *
 * <p>From 15 to 0 degrees C within 0.05 % of measured lubricants and 0.1 % of a gear oil, from 15 to 100 degrees C within
 * 0.03 % of squalane.
 *
 * <p>Worked example: 850 kg/m3 at 15 degrees C is 884.07 kg/m3 at -40 degrees C.
 *
 * @param referenceDensity density at 15 degrees C [kg/m3], 800 to 1164
 */
@Source("API MPMS chapter 11.1 (2004) / ASTM D1250, lubricating oils, K1 = 0.6278 kg/(m3 K)")
@Validity("rho15 800..1164 kg/m3; table about -18..150 degrees C (from memory), goes on smoothly outside")
public record MpmsDensity(double referenceDensity) {
    /** Reference temperature [K]. */
    public static final double REFERENCE_TEMPERATURE = 288.15;

    /** Least density at 15 degrees C of the commodity group [kg/m3]. */
    public static final double MIN_REFERENCE_DENSITY = 800;

    /** Greatest density at 15 degrees C of the commodity group [kg/m3]. */
    public static final double MAX_REFERENCE_DENSITY = 1164;

    /** K1 of lubricating oils [kg/(m3 K)]. */
    private static final double K1 = 0.6278;

    private static final int MAX_STEPS = 20;

    public MpmsDensity {
        Require.within(
                "referenceDensity", referenceDensity, MIN_REFERENCE_DENSITY, MAX_REFERENCE_DENSITY, "kg/m3 at 15 C");
    }

    /**
     * The law through a density at a stated temperature.
     *
     * @param density [kg/m3]
     * @param temperature at which it was read [K]
     * @throws IllegalArgumentException if the density at 15 degrees C falls outside 800 to 1164 kg/m3
     */
    public static MpmsDensity through(double density, double temperature) {
        return new MpmsDensity(referenceDensity(density, temperature));
    }

    /** Density at 15 degrees C [kg/m3] of an oil with a density [kg/m3] at a temperature [K], by iteration. */
    static double referenceDensity(double density, double temperature) {
        Require.positive("density", density, "kg/m3");
        double reference = density;
        for (int step = 0; step < MAX_STEPS; step++) {
            double next = density / expansion(reference, temperature);
            if (Math.abs(next - reference) <= 1e-12 * density) {
                return next;
            }
            reference = next;
        }
        return reference;
    }

    /**
     * Density.
     *
     * @param temperature [K]
     * @return [kg/m3]
     */
    public double density(double temperature) {
        return referenceDensity * expansion(referenceDensity, temperature);
    }

    private static double expansion(double reference, double temperature) {
        double e = K1 / reference * (temperature - REFERENCE_TEMPERATURE);
        return Math.exp(-e * (1 + 0.8 * e));
    }
}
