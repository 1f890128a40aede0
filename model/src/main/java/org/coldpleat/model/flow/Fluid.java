package org.coldpleat.model.flow;

/**
 * Oil as a flowing part sees it at one temperature.
 *
 * @param dynamicViscosity [Pa s], above 0
 * @param density [kg/m3], at least 0; 0 stands for creeping flow without inertia
 */
public record Fluid(double dynamicViscosity, double density) {
    public Fluid {
        if (!(dynamicViscosity > 0) || Double.isInfinite(dynamicViscosity)) {
            throw new IllegalArgumentException(
                    "dynamicViscosity must be finite and above 0 Pa s, was " + dynamicViscosity);
        }
        if (!(density >= 0) || Double.isInfinite(density)) {
            throw new IllegalArgumentException("density must be finite and at least 0 kg/m3, was " + density);
        }
    }
}
