package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Random overlapping fibers, from electrical conduction:
 * {@code k/a^2 = eps/(8 ln^2 eps) (eps-p)^(q+2) / {(1-p)^q [(q+1) eps - p]^2}}.
 *
 * <p>Symbols: c solidity, {@code eps = 1 - c} [1], p percolation threshold [1], q exponent [1], a fiber radius [m].
 */
@Source("M. M. Tomadakis and T. J. Robertson 2005, J. Compos. Mater. 39, 163 (from memory)")
@Validity("c 0.1 to 0.6; about six times too open at 0.01; 0 where the pores no longer connect")
public final class TomadakisRobertsonPermeability {
    private TomadakisRobertsonPermeability() {}

    /**
     * Through a sheet whose fibers lie in its plane.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.64299 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        return law(solidity, 0.11, 0.785);
    }

    /** Along a sheet whose fibers lie in its plane: k/d^2 [1] at a solidity [1]. */
    public static double normalizedInPlanePermeability(double solidity) {
        return law(solidity, 0.11, 0.521);
    }

    /** Fibers in all directions: k/d^2 [1] at a solidity [1]. */
    public static double normalizedIsotropicPermeability(double solidity) {
        return law(solidity, 0.037, 0.661);
    }

    private static double law(double solidity, double threshold, double exponent) {
        double porosity = 1 - Solidity.require(solidity);
        if (porosity <= threshold) {
            return 0;
        }
        double log = Math.log1p(-solidity);
        double bracket = (exponent + 1) * porosity - threshold;
        return porosity
                / (32 * log * log)
                * Math.pow(porosity - threshold, exponent + 2)
                / (Math.pow(1 - threshold, exponent) * bracket * bracket);
    }
}
