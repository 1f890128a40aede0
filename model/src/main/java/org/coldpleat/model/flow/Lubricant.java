package org.coldpleat.model.flow;

/** Oil properties as functions of temperature, as the hydraulic parts need them. All temperatures in kelvin. */
public interface Lubricant {
    /** Viscosity and density at a temperature [K]. */
    Fluid at(double temperature);

    /** Specific heat capacity [J/(kg K)] at a temperature [K]. */
    double heatCapacity(double temperature);
}
