package org.coldpleat.model.oil.curve;

/** Kinematic viscosity of one oil as a function of temperature, strictly falling from -40 to 150 degrees C. */
public interface ViscosityCurve {
    /**
     * Kinematic viscosity.
     *
     * @param temperature [K]
     * @return [m2/s], above 0
     */
    double kinematicViscosity(double temperature);

    /**
     * Relative slope of the viscosity.
     *
     * @param temperature [K]
     * @return d(ln nu)/dT [1/K], below 0
     */
    double logSlope(double temperature);
}
