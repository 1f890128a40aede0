package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Cell model of fibers along the flow, free of shear at the cell edge:
 * {@code k/d^2 = [4 c - c^2 - 3 - 2 ln c]/(32 c)}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source(
        "J. Happel 1959, AIChE J. 5, 174 (from memory); Kozeny constants of J. Happel and H. Brenner 1965, Low Reynolds Number Hydrodynamics")
@Validity("all c (cell model)")
public final class HappelParallelPermeability {
    private HappelParallelPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        return (solidity * (4 - solidity) - 3 - 2 * Math.log(solidity)) / (32 * solidity);
    }
}
