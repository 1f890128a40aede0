package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Random fibers in three dimensions: {@code k/a^2 = 3/(20 c) (-ln c - 0.931)}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("G. W. Jackson and D. F. James 1986, Can. J. Chem. Eng. 64, 364 (from memory)")
@Validity("c below 0.25; falls through 0 at c = 0.394, so not for denser mats")
public final class JacksonJamesPermeability {
    private JacksonJamesPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]; 0.51434 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        return 3 / (80 * solidity) * (-Math.log(solidity) - 0.931);
    }
}
