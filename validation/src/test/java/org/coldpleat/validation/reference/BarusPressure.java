package org.coldpleat.validation.reference;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Rise of dynamic viscosity with pressure, {@code mu = mu0 exp(alpha p)}. At the pressures of an oil filter (below 15
 * bar) it is 2 to 4 %, and viscous heating of the same flow takes back as much: neglect both or neither.
 *
 * @param coefficient alpha [1/Pa], at least 0; petroleum oils about 20e-9 to 35e-9 at 30 degrees C
 */
@Source("C. Barus 1893, American Journal of Science 45, 87")
@Validity("up to about 100 MPa with a secant coefficient; goes on smoothly outside")
public record BarusPressure(double coefficient) {
    public BarusPressure {
        if (!(coefficient >= 0) || Double.isInfinite(coefficient)) {
            throw new IllegalArgumentException("coefficient must be finite and at least 0 1/Pa, was " + coefficient);
        }
    }

    /** The law through two viscosities of the same kind and unit at two pressures [Pa] and one temperature. */
    public static BarusPressure through(double pressure1, double viscosity1, double pressure2, double viscosity2) {
        Require.positive("viscosity", viscosity1, "");
        Require.positive("viscosity", viscosity2, "");
        return new BarusPressure(Math.log(viscosity2 / viscosity1) / (pressure2 - pressure1));
    }

    /** Viscosity under a pressure above ambient [Pa] over that at ambient pressure [1]. */
    public double factor(double gaugePressure) {
        return Math.exp(coefficient * gaugePressure);
    }
}
