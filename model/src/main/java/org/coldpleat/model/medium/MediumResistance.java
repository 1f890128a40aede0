package org.coldpleat.model.medium;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Resistance of a sheet, R = thickness / permeability [1/m]: pressure drop = viscosity x face velocity x R. */
@Source("H. Darcy 1856 (textbook form)")
@Validity("creeping flow: rho v sqrt(k)/mu below about 0.02; oil through filter paper stays below 0.001")
public final class MediumResistance {
    private MediumResistance() {}

    /** Resistance [1/m] of a sheet of a thickness [m] and permeability [m2]. */
    public static double of(double thickness, double permeability) {
        Require.positive("thickness", thickness, "m");
        Require.positive("permeability", permeability, "m2");
        return thickness / permeability;
    }

    /**
     * Resistance of a fibrous sheet from its structure.
     *
     * @param normalizedPermeability k/d^2 from one of the permeability laws [1]
     * @param fiberDiameter d [m]
     * @param thickness [m]
     * @return [1/m]
     */
    public static double ofFibers(double normalizedPermeability, double fiberDiameter, double thickness) {
        Require.positive("normalizedPermeability", normalizedPermeability, "[1]");
        Require.positive("fiberDiameter", fiberDiameter, "m");
        return of(thickness, normalizedPermeability * fiberDiameter * fiberDiameter);
    }

    /** Pressure drop [Pa] of a fluid of a viscosity [Pa s] at a face velocity [m/s], any sign, for a resistance [1/m]. */
    public static double pressureDrop(double resistance, double dynamicViscosity, double faceVelocity) {
        return resistance * dynamicViscosity * faceVelocity;
    }
}
