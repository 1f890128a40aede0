package org.coldpleat.model.bench;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Air at one state.
 *
 * @param pressure absolute [Pa]
 * @param dynamicViscosity [Pa s]
 * @param density [kg/m3]
 * @param meanFreePath of its molecules [m]
 */
@Source("ideal gas; mean free path (mu/p) sqrt(pi R T/2) of kinetic theory")
@Validity("dry air near atmospheric pressure; moist air is up to 1 % lighter and thinner at 30 degC")
public record Air(double pressure, double dynamicViscosity, double density, double meanFreePath) {
    /** Specific gas constant of dry air [J/(kg K)]. */
    @Source("U.S. Standard Atmosphere 1976")
    private static final double GAS_CONSTANT = 287.053;

    /**
     * Air at a temperature [K] and absolute pressure [Pa].
     *
     * @param viscosity dynamic viscosity of air [Pa s] as a function of temperature [K]
     */
    public static Air at(double temperature, double pressure, DoubleUnaryOperator viscosity) {
        Require.within("temperature", temperature, 200, 400, "K");
        Require.within("pressure", pressure, 5e4, 2e5, "Pa");
        double mu = viscosity.applyAsDouble(temperature);
        double thermal = GAS_CONSTANT * temperature;
        return new Air(pressure, mu, pressure / thermal, mu / pressure * Math.sqrt(Math.PI * thermal / 2));
    }
}
