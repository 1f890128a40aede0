package org.coldpleat.model.medium;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Cell model of fibers across the flow with zero vorticity at the cell edge: {@code k/d^2 = Ku/(16 c)},
 * {@code Ku = -0.5 ln c - 0.75 + c - c^2/4}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("S. Kuwabara 1959, J. Phys. Soc. Japan 14, 527 (from memory)")
@Validity("c below 0.3 (within 0.5 % of a hexagonal array there); smooth to 1")
public final class KuwabaraPermeability {
    /** Kuwabara factor Ku [1] at a solidity [1], above 0 and below 1. */
    public static double kuwabaraFactor(double solidity) {
        double c = Solidity.require(solidity);
        return -0.5 * Math.log(c) - 0.75 + c - c * c / 4;
    }

    private KuwabaraPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.31175 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        return kuwabaraFactor(solidity) / (16 * solidity);
    }
}
