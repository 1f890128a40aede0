package org.coldpleat.model.circuit;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * What a circuit of laminar parts at one viscosity does, in closed form: the reasons behind a verdict, and limits the full
 * solver must meet. Symbols: psi_f, psi_g resistances of filter and gallery [1/m3], r = psi_f/psi_g.
 */
@Source("derived here")
@Validity("all parts laminar, one viscosity, no side flow")
public final class ClosedForms {
    private ClosedForms() {}

    /** Flow with relief and bypass shut, {@code D n/(1 + lam (psi_f + psi_g))} [m3/s]: the same at every viscosity. */
    public static double shutFlow(Pump pump, double speed, double filterResistance, double galleryResistance) {
        return pump.displacement() * speed / (1 + pump.slip() * (filterResistance + galleryResistance));
    }

    /** Share of the pump pressure that falls over the filter, {@code s = psi_f/(psi_f + psi_g)} [1]. */
    public static double filterShare(double filterResistance, double galleryResistance) {
        return filterResistance / (filterResistance + galleryResistance);
    }

    /** Highest filter drop under an ideal outlet-sensing relief, {@code s p_r} [Pa]: no cold exceeds it. */
    public static double reliefCeiling(double filterResistance, double galleryResistance, double reliefPressure) {
        return filterShare(filterResistance, galleryResistance) * reliefPressure;
    }

    /** Ratio psi_f/psi_g above which cold oil opens the bypass at all, {@code p_b/(p_r - p_b)} [1]; infinite when
     * the relief opens first. */
    public static double criticalRatio(double bypassPressure, double reliefPressure) {
        return reliefPressure > bypassPressure
                ? bypassPressure / (reliefPressure - bypassPressure)
                : Double.POSITIVE_INFINITY;
    }

    /** Viscosity at which the bypass opens with the relief still shut, {@code p_b/(psi_f Q)} [Pa s]. */
    public static double thresholdViscosity(double bypassPressure, double filterResistance, double shutFlow) {
        return bypassPressure / (filterResistance * shutFlow);
    }

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
        return Math.max(0, 1 - criticalRatio(bypassPressure, reliefPressure) / resistanceRatio);
    }

    /** Filter drop under an ideal gallery-sensing relief, bypass shut, {@code r p_set} [Pa]: not bounded by the setting. */
    public static double gallerySensingDrop(double resistanceRatio, double setPressure) {
        return resistanceRatio * setPressure;
    }

    /** Bypassed share under an ideal gallery-sensing relief, {@code 1 - (p_b/p_set)/r}, not below 0 [1]. */
    public static double gallerySensingBypassShare(double resistanceRatio, double bypassPressure, double setPressure) {
        return Math.max(0, 1 - bypassPressure / setPressure / resistanceRatio);
    }

    /** Pump pressure in deep cold with a linear override m [Pa s/m3] and a pump without slip, {@code p_r + m D n} [Pa]. */
    public static double deepColdOverridePressure(double reliefPressure, double override, double displacedFlow) {
        return reliefPressure + override * displacedFlow;
    }

    /**
     * Ratio psi_f/psi_g from hot readings, {@code dp_f/(chi p_g)} [1], with chi the laminar share of the gallery's drop.
     */
    public static double ratioFromHotReading(double hotFilterDrop, double hotGalleryPressure, double laminarShare) {
        return hotFilterDrop / (laminarShare * hotGalleryPressure);
    }

    /** What the naive reckoning gives, pump flow times cold filter resistance {@code mu psi_f Q} [Pa]; shown as a warning. */
    public static double naiveFilterDrop(double dynamicViscosity, double filterResistance, double pumpFlow) {
        return dynamicViscosity * filterResistance * pumpFlow;
    }

    /** Adiabatic temperature rise of oil that loses pressure, {@code dp/(rho cp)} [K]. */
    public static double adiabaticRise(double pressureDrop, double density, double heatCapacity) {
        return pressureDrop / (density * heatCapacity);
    }
}
