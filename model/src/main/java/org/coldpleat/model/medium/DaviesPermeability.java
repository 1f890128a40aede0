package org.coldpleat.model.medium;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Empirical law for fibrous mats: {@code k/d^2 = 1/[64 c^1.5 (1 + 56 c^3)]}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("C. N. Davies 1952, Proc. Inst. Mech. Engrs. B1, 185 (form and range as reprinted in air-pollution textbooks)")
@Validity(
        "c 0.006 to 0.3 as first quoted, 0.06 to 0.30 in later prints; Reynolds number of the fiber below 1; smooth outside")
public final class DaviesPermeability {
    private DaviesPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.46790 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        return 1 / (64 * solidity * Math.sqrt(solidity) * (1 + 56 * solidity * solidity * solidity));
    }
}
