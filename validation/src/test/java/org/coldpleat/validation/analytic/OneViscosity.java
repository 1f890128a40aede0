package org.coldpleat.validation.analytic;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;

/** Oil of one viscosity at every temperature, for checks against closed forms. */
public record OneViscosity(double dynamicViscosity, double density) implements Lubricant {
    @Override
    public Fluid at(double temperature) {
        return new Fluid(dynamicViscosity, density);
    }

    @Override
    public double heatCapacity(double temperature) {
        return 1900;
    }
}
