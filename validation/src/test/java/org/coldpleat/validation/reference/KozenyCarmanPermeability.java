package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Hydraulic-radius law: {@code k/d^2 = eps^3/(16 K c^2)}, {@code eps = 1 - c}, K = 5.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("P. C. Carman 1937 (K = 5 from memory); 5.55 for pulp after Robertson and Mason 1949")
@Validity("c above 0.25 (porosity below 0.75); far too open for light mats")
public final class KozenyCarmanPermeability {
    /** Kozeny constant [1]. */
    @Source("P. C. Carman 1937 (from memory)")
    private static final double KOZENY_CONSTANT = 5;

    private KozenyCarmanPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.91125 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        double porosity = 1 - solidity;
        return porosity * porosity * porosity / (16 * KOZENY_CONSTANT * solidity * solidity);
    }
}
