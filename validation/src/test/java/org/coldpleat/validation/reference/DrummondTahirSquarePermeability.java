package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Square array of fibers across the flow:
 * {@code k/a^2 = 1/(8 c) [-ln c - 1.476336 + (2 c - 0.795898 c^2)/(1 + 0.489192 c - 1.604869 c^2)]}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source(
        "J. E. Drummond and M. I. Tahir 1984, Int. J. Multiphase Flow 10, 515 (from memory, checked against Sangani and Acrivos 1982)")
@Validity("c up to 0.2 (error 0.3 %; 4 % at 0.3, 26 % at 0.4)")
public final class DrummondTahirSquarePermeability {
    private DrummondTahirSquarePermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        double c = solidity;
        double ratio = c * (2 - 0.795898 * c) / (1 + c * (0.489192 - 1.604869 * c));
        return (-Math.log(c) - 1.476336 + ratio) / (32 * c);
    }
}
