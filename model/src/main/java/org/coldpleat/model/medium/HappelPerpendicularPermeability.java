package org.coldpleat.model.medium;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Cell model of fibers across the flow, free of shear at the cell edge:
 * {@code k/d^2 = [-ln c + (c^2-1)/(c^2+1)]/(32 c)}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source(
        "J. Happel 1959, AIChE J. 5, 174 (from memory); Kozeny constants of J. Happel and H. Brenner 1965, Low Reynolds Number Hydrodynamics")
@Validity("all c (cell model)")
public final class HappelPerpendicularPermeability {
    private HappelPerpendicularPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.41325 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        double square = solidity * solidity;
        return (-Math.log(solidity) + (square - 1) / (square + 1)) / (32 * solidity);
    }
}
