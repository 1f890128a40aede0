package org.coldpleat.validation.reference;

import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Fiber in an effective (Brinkman) medium of its own permeability, with {@code y = sqrt(k)/a}:
 * {@code 1/(4 c) = 1/2 + y K1(1/y)/K0(1/y)} for fibers across the flow and
 * {@code 1/(4 c) = 1/3 + (5/6) y K1(1/y)/K0(1/y)} for fibers in all directions.
 *
 * <p>Symbols: c solidity (fiber volume share) [1], k permeability [m2], d fiber diameter [m], a = d/2, K0 and K1
 * modified Bessel functions.
 */
@Source("L. Spielman and S. L. Goren 1968, Environ. Sci. Technol. 2, 279 (equations from memory)")
@Validity("dilute to moderate mats, c below about 0.3; needs c below 0.5 (across) or 0.75 (all directions)")
public final class SpielmanGorenPermeability {
    private SpielmanGorenPermeability() {}

    /**
     * Fibers across the flow.
     *
     * @param solidity [1], above 0 and below 0.5
     * @return k/d^2 [1]; 0.42065 at 0.10
     */
    public static double normalizedPermeability(double solidity) {
        return solve(solidity, 0.5, 1);
    }

    /**
     * Fibers in all directions.
     *
     * @param solidity [1], above 0 and below 0.75
     * @return k/d^2 [1]; 0.62456 at 0.10
     */
    public static double normalizedIsotropicPermeability(double solidity) {
        return solve(solidity, 1.0 / 3, 5.0 / 6);
    }

    /** Finds y = sqrt(k)/a with shift + factor y K1(1/y)/K0(1/y) = 1/(4c); the left side rises with y. */
    private static double solve(double solidity, double shift, double factor) {
        double target = 1 / (4 * Solidity.require(solidity)) - shift;
        if (!(target > 0)) {
            throw new IllegalArgumentException("solidity must be below " + 1 / (4 * shift) + " [1], was " + solidity);
        }
        double low = 1e-3;
        double high = 1e3;
        for (int i = 0; i < 200 && high - low > 1e-14 * high; i++) {
            double middle = Math.sqrt(low * high);
            if (factor * middle * besselRatio(1 / middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double y = Math.sqrt(low * high);
        return y * y / 4;
    }

    /** K1(x)/K0(x) by the trapezoidal rule on {@code K_n(x) = int exp(-x cosh s) cosh(n s) ds}, exponentially exact. */
    @Source("M. Abramowitz and I. A. Stegun 1964, Handbook of Mathematical Functions, 9.6.24")
    private static double besselRatio(double x) {
        double step = 0.05;
        double zeroth = 0.5;
        double first = 0.5;
        for (int i = 1; i < 1000; i++) {
            double s = i * step;
            double weight = Math.exp(-x * (Math.cosh(s) - 1));
            if (weight < 1e-18) {
                break;
            }
            zeroth += weight;
            first += weight * Math.cosh(s);
        }
        return first / zeroth;
    }
}
