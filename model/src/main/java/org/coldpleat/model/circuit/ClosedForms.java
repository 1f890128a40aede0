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

    /** Filter drop under an ideal gallery-sensing relief, bypass shut, {@code r p_set} [Pa]: not bounded by the setting. */
    public static double gallerySensingDrop(double resistanceRatio, double setPressure) {
        return resistanceRatio * setPressure;
    }
}
