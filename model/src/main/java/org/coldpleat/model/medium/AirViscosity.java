package org.coldpleat.model.medium;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Dynamic viscosity and mean free path of air. */
@Source("U.S. Standard Atmosphere 1976, equation 51: beta T^1.5/(T + S), beta 1.458e-6, S 110.4 K (from memory)")
@Validity("200 to 600 K, pressures near atmospheric; within 1 %")
public final class AirViscosity {
    private static final double BETA = 1.458e-6;
    private static final double SUTHERLAND_TEMPERATURE = 110.4;

    /** Specific gas constant of dry air [J/(kg K)]. */
    @Source("U.S. Standard Atmosphere 1976 (from memory)")
    private static final double GAS_CONSTANT = 287.053;

    private AirViscosity() {}

    /** Dynamic viscosity [Pa s] at a temperature [K]; 1.812e-5 at 293.15. */
    public static double at(double temperature) {
        Require.positive("temperature", temperature, "K");
        return BETA * temperature * Math.sqrt(temperature) / (temperature + SUTHERLAND_TEMPERATURE);
    }

    /** Mean free path [m] at a temperature [K] and pressure [Pa, absolute]: {@code (mu/p) sqrt(pi R T/2)}. */
    @Source("kinetic theory of gases (textbook); 0.065 micrometers at 293 K and 101.3 kPa")
    public static double meanFreePath(double temperature, double pressure) {
        Require.positive("pressure", pressure, "Pa");
        return at(temperature) / pressure * Math.sqrt(Math.PI * GAS_CONSTANT * temperature / 2);
    }
}
