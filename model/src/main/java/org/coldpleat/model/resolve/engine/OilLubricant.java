package org.coldpleat.model.resolve.engine;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.oil.Oil;

/** An oil as the hydraulic parts see it. */
public record OilLubricant(Oil oil) implements Lubricant {
    @Override
    public Fluid at(double temperature) {
        double density = oil.density(temperature);
        return new Fluid(oil.kinematicViscosity(temperature) * density, density);
    }

    @Override
    public double heatCapacity(double temperature) {
        return oil.heatCapacity(temperature);
    }
}
