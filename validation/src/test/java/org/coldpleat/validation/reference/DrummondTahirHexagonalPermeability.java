package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Hexagonal array of fibers across the flow:
 * {@code k/a^2 = 1/(8 c) [-ln c - 1.4975 + 2 c - c^2/2 - 0.739 c^4 + 2.534 c^5/(1 + 1.2758 c)]}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source(
        "J. E. Drummond and M. I. Tahir 1984, Int. J. Multiphase Flow 10, 515 (form from memory; 1.4975 refitted here to an eigenfunction solution)")
@Validity("c up to 0.3 (error 0.2 %; 1.3 % at 0.4)")
public final class DrummondTahirHexagonalPermeability {
    private DrummondTahirHexagonalPermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        double c = solidity;
        double cube = c * c * c;
        double series = 2 * c - c * c / 2 - 0.739 * cube * c + 2.534 * cube * c * c / (1 + 1.2758 * c);
        return (-Math.log(c) - 1.4975 + series) / (32 * c);
    }
}
