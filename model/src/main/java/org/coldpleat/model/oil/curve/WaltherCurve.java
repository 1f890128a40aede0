package org.coldpleat.model.oil.curve;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Walther line {@code log10(log10 Z) = A - B log10 T}, T in kelvin and Z of {@link WaltherScale}.
 *
 * <p>Error against measured petroleum and synthetic oils fitted at 40 and 100 degrees C: about 3 % from 25 to 150
 * degrees C, 15 % at 0 degrees C, a factor of 0.5 to 2 at -40 degrees C ; what classes of oils do below 40 degrees C is in {@link BiasedWaltherCurve}.
 *
 * <p>Worked example: 404 mm2/s at 40 degrees C and 28 mm2/s at 100 degrees C give 132.13 mm2/s at 60 degrees C.
 *
 * @param a A [1], finite
 * @param b B [1], above 0
 */
@Source("ASTM D341-09(2015)")
@Validity("homogeneous liquid, from cloud point to initial boiling point; goes on smoothly outside")
public record WaltherCurve(double a, double b) implements ViscosityCurve {
    private static final double LN10 = Math.log(10);

    public WaltherCurve {
        if (!Double.isFinite(a) || !(b > 0) || Double.isInfinite(b)) {
            throw new IllegalArgumentException("Walther constants need a finite and b above 0, were " + a + ", " + b);
        }
    }

    /**
     * The line through two points, in either order.
     *
     * @param temperature1 [K], above 0
     * @param viscosity1 kinematic viscosity at the first temperature [m2/s], 0.21e-6 to 20
     * @param temperature2 [K], above 0, not equal to the first
     * @param viscosity2 kinematic viscosity at the second temperature [m2/s], lower at the higher temperature
     */
    public static WaltherCurve through(double temperature1, double viscosity1, double temperature2, double viscosity2) {
        WaltherScale.requireFalling(temperature1, viscosity1, temperature2, viscosity2);
        double w1 = WaltherScale.scaled(viscosity1);
        double w2 = WaltherScale.scaled(viscosity2);
        double x1 = Math.log10(temperature1);
        double b = (w1 - w2) / (Math.log10(temperature2) - x1);
        return new WaltherCurve(w1 + b * x1, b);
    }

    @Override
    public double kinematicViscosity(double temperature) {
        return WaltherScale.viscosity(a - b * Math.log10(temperature));
    }

    @Override
    public double logSlope(double temperature) {
        return -b / (temperature * LN10) * WaltherScale.logSlope(kinematicViscosity(temperature));
    }
}
