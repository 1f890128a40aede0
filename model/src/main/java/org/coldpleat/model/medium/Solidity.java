package org.coldpleat.model.medium;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Share of the sheet volume that is fiber and binder. */
public final class Solidity {
    private Solidity() {}

    /**
     * Solidity of a sheet: {@code basis weight / (fiber density x thickness)}.
     *
     * @param basisWeight mass per area [kg/m2]
     * @param fiberDensity density of the solid, binder included [kg/m3]
     * @param thickness at a stated gauge pressure [m]
     * @return [1]; 0.1455 for 0.120 kg/m2, 1500 kg/m3, 0.55 mm
     */
    @Source("derived here: definition")
    @Validity("result below 1; common sheets 0.04 to 0.25")
    public static double of(double basisWeight, double fiberDensity, double thickness) {
        Require.positive("basisWeight", basisWeight, "kg/m2");
        Require.positive("fiberDensity", fiberDensity, "kg/m3");
        Require.positive("thickness", thickness, "m");
        return require(basisWeight / (fiberDensity * thickness));
    }

    /**
     * Density of a blend from mass shares: {@code 1/rho = sum(w_i/rho_i)}.
     *
     * @param massShares [1], double[n], each at least 0, sum 1 within 1e-6
     * @param densities [kg/m3], double[n]
     * @return [kg/m3]; 1442 for 80 % of 1500 and 20 % of 1250
     */
    @Source("derived here: volumes of the parts add")
    public static double blendDensity(double[] massShares, double[] densities) {
        if (massShares.length == 0 || massShares.length != densities.length) {
            throw new IllegalArgumentException("massShares and densities must have the same length above 0, had "
                    + massShares.length + " and " + densities.length);
        }
        double sum = 0;
        double volume = 0;
        for (int i = 0; i < massShares.length; i++) {
            if (!(massShares[i] >= 0)) {
                throw new IllegalArgumentException("massShares must be at least 0 [1], had " + massShares[i]);
            }
            Require.positive("densities", densities[i], "kg/m3");
            sum += massShares[i];
            volume += massShares[i] / densities[i];
        }
        if (!(Math.abs(sum - 1) <= 1e-6)) {
            throw new IllegalArgumentException("massShares must add up to 1 [1], gave " + sum);
        }
        return sum / volume;
    }

    /**
     * Resistance over its first value when a sheet is pressed to a share of its thickness, fiber conserved, Davies law:
     * {@code [t k(c)] -> R/R0 = s k(c0)/k(c0/s)}.
     *
     * @param solidity before [1]
     * @param thicknessShare thickness after over before [1], above solidity, at most 1 for compression
     * @return [1]; 1.1164 for 0.15 and 0.9
     */
    @Source("derived here: solidity x thickness is conserved; Davies 1952 for the trend")
    @Validity("solidity 0.05 to 0.3 after compression")
    public static double compressedResistanceRatio(double solidity, double thicknessShare) {
        double after = require(require(solidity) / thicknessShare);
        return thicknessShare
                * DaviesPermeability.normalizedPermeability(solidity)
                / DaviesPermeability.normalizedPermeability(after);
    }

    /** The solidity [1], which must lie above 0 and below 1. */
    public static double require(double solidity) {
        if (!(solidity > 0 && solidity < 1)) {
            throw new IllegalArgumentException("solidity must be above 0 and below 1 [1], was " + solidity);
        }
        return solidity;
    }
}
