package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Pulp mats: Kozeny factor {@code 3.5 eps^3 c^-0.5 (1 + 57 c^3)}, which gives
 * {@code k/d^2 = 1/[56 c^1.5 (1 + 57 c^3)]} for round fibers.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("W. L. Ingmanson, B. D. Andrews, R. C. Johnson 1959, Tappi 42, 840 (3.5 and 57 as reprinted; form from memory)")
@Validity("pulp at fiber concentration below 250 kg/m3; smooth outside")
public final class DaviesIngmansonPermeability {
    private DaviesIngmansonPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        return 1 / (56 * solidity * Math.sqrt(solidity) * (1 + 57 * solidity * solidity * solidity));
    }
}
