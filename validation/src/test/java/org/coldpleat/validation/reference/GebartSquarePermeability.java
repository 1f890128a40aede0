package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Dense square array of fibers across the flow, lubrication in the narrow gaps:
 * {@code k/a^2 = C (sqrt(c_max/c) - 1)^2.5}.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2.
 */
@Source("B. R. Gebart 1992, J. Compos. Mater. 26, 1100 (from memory)")
@Validity("c above 0.35 (error 18 % at 0.3, 3 % at 0.7); 0 beyond the densest packing")
public final class GebartSquarePermeability {
    /** Solidity of touching fibers [1]. */
    private static final double DENSEST = Math.PI / 4;

    /** Constant C [1]. */
    private static final double CONSTANT = 16 / (9 * Math.PI * Math.sqrt(2));

    private GebartSquarePermeability() {}

    /**
     * Permeability over the square of the fiber diameter.
     *
     * @param solidity [1], above 0 and below 1
     * @return k/d^2 [1]
     */
    public static double normalizedPermeability(double solidity) {
        Solidity.require(solidity);
        double open = Math.sqrt(DENSEST / solidity) - 1;
        return open > 0 ? CONSTANT / 4 * open * open * Math.sqrt(open) : 0;
    }
}
