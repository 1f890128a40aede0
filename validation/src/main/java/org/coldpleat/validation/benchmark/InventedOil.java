package org.coldpleat.validation.benchmark;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;

/**
 * Invented oil whose kinematic viscosity follows {@code ln ln(nu + 0.7) = a - b ln T} (nu in mm2/s, T in K) through two
 * points at 40 and 100 degrees Celsius, with linear density and heat capacity.
 *
 * @param viscosityAt40 [mm2/s]
 * @param viscosityAt100 [mm2/s]
 */
public record InventedOil(double viscosityAt40, double viscosityAt100) implements Lubricant {
    private static final double WARM = 313.15;
    private static final double HOT = 373.15;

    @Override
    public Fluid at(double temperature) {
        double warm = Math.log(Math.log(viscosityAt40 + 0.7));
        double hot = Math.log(Math.log(viscosityAt100 + 0.7));
        double b = (warm - hot) / Math.log(HOT / WARM);
        double kinematic = Math.exp(Math.exp(warm - b * Math.log(temperature / WARM))) - 0.7;
        double density = 860 - 0.62 * (temperature - WARM);
        return new Fluid(Math.max(kinematic, 1e-3) * 1e-6 * density, density);
    }

    @Override
    public double heatCapacity(double temperature) {
        return 1950 + 4 * (temperature - WARM);
    }
}
