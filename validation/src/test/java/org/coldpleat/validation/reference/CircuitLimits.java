package org.coldpleat.validation.reference;

import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Limits in closed form that the full solver must meet, beside those that the program tells its user of. */
@Source("derived here")
@Validity("all parts laminar, one viscosity, no side flow")
public final class CircuitLimits {
    private CircuitLimits() {}

    /** Viscosity at which the relief opens with the bypass shut, {@code p_r/((psi_f + psi_g) Q)} [Pa s]. */
    public static double reliefViscosity(
            double reliefPressure, double filterResistance, double galleryResistance, double shutFlow) {
        return reliefPressure / ((filterResistance + galleryResistance) * shutFlow);
    }

    /**
     * Share of the oil that is bypassed in deep cold, ideal bypass and ideal outlet-sensing relief both open,
     * {@code 1 - r_crit/r}, not below 0 [1]: the same however cold.
     */
    public static double deepColdBypassShare(double resistanceRatio, double bypassPressure, double reliefPressure) {
        return Math.max(0, 1 - ClosedForms.criticalRatio(bypassPressure, reliefPressure) / resistanceRatio);
    }

    /** Bypassed share under an ideal gallery-sensing relief, {@code 1 - (p_b/p_set)/r}, not below 0 [1]. */
    public static double gallerySensingBypassShare(double resistanceRatio, double bypassPressure, double setPressure) {
        return Math.max(0, 1 - bypassPressure / setPressure / resistanceRatio);
    }

    /** Pump pressure in deep cold with a linear override m [Pa s/m3] and a pump without slip, {@code p_r + m D n} [Pa]. */
    public static double deepColdOverridePressure(double reliefPressure, double override, double displacedFlow) {
        return reliefPressure + override * displacedFlow;
    }

    /** Adiabatic temperature rise of oil that loses pressure, {@code dp/(rho cp)} [K]. */
    public static double adiabaticRise(double pressureDrop, double density, double heatCapacity) {
        return pressureDrop / (density * heatCapacity);
    }
}
