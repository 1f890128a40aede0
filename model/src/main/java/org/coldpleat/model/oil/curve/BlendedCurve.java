package org.coldpleat.model.oil.curve;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Viscosity of two oils poured together: at each temperature {@code W = (1 - v) W_1 + v W_2} on the double-logarithmic
 * scale {@code W = log10(log10 Z)} of {@link WaltherCurve}, v the volume share of the second oil at the time they are
 * mixed.
 *
 * <p>Good to about 10 % for oils without much polymer; the standard itself is not meant for oils with polymer.
 *
 * <p>Worked example: 60 % of 5 mm2/s and 40 % of 20 mm2/s give 8.08 mm2/s.
 *
 * @param first curve of the first oil
 * @param second curve of the second oil
 * @param share volume share of the second oil [1], 0 to 1
 */
@Source("blending by volume at one temperature, as ASTM D7152 (formula from memory; the standard names it, its text was"
        + " not at hand); scale: ASTM D341-09(2015)")
@Validity("both oils mixed, one liquid; viscosities 0.21 to 2e7 mm2/s")
public record BlendedCurve(ViscosityCurve first, ViscosityCurve second, double share) implements ViscosityCurve {
    public BlendedCurve {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Require.within("share", share, 0, 1, "1");
    }

    @Override
    public double kinematicViscosity(double temperature) {
        return blend(first.kinematicViscosity(temperature), second.kinematicViscosity(temperature), share);
    }

    @Override
    public double logSlope(double temperature) {
        return firstWeight(temperature) * first.logSlope(temperature)
                + secondWeight(temperature) * second.logSlope(temperature);
    }

    /** How much ln(n) of the blend moves with that of the first oil [1] at a temperature [K]. */
    public double firstWeight(double temperature) {
        return (1 - share) * weight(first.kinematicViscosity(temperature), kinematicViscosity(temperature));
    }

    /** How much ln(n) of the blend moves with that of the second oil [1] at a temperature [K]. */
    public double secondWeight(double temperature) {
        return share * weight(second.kinematicViscosity(temperature), kinematicViscosity(temperature));
    }

    /** How much ln(n) of the blend moves with the share [1] at a temperature [K]. */
    public double shareSlope(double temperature) {
        return WaltherScale.logSlope(kinematicViscosity(temperature))
                * (WaltherScale.scaled(second.kinematicViscosity(temperature))
                        - WaltherScale.scaled(first.kinematicViscosity(temperature)));
    }

    /**
     * Kinematic viscosity of a blend [m2/s].
     *
     * @param first kinematic viscosity of the first oil [m2/s]
     * @param second kinematic viscosity of the second oil [m2/s]
     * @param share volume share of the second oil [1]
     */
    static double blend(double first, double second, double share) {
        return WaltherScale.viscosity((1 - share) * WaltherScale.scaled(first) + share * WaltherScale.scaled(second));
    }

    private static double weight(double one, double blend) {
        return WaltherScale.logSlope(blend) / WaltherScale.logSlope(one);
    }
}
