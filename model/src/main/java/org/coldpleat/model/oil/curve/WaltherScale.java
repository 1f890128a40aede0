package org.coldpleat.model.oil.curve;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * The double-logarithmic scale on which viscosity against log temperature is nearly a straight line.
 *
 * <p>{@code W = log10(log10 Z)}, {@code Z = n + 0.7 + exp(-1.47 - 1.84 n - 0.51 n^2)}, n the kinematic viscosity in
 * mm2/s. The exponential is the short form for thin liquids; it is kept at every viscosity, since it fades out by itself
 * (3e-4 of Z at 2 mm2/s, 1e-11 at 5 mm2/s) and a switch would leave a step.
 */
@Source("ASTM D341-09(2015), equations for Z and its inverse (short form)")
@Validity("n 0.21..2e7 mm2/s; goes on smoothly outside")
public final class WaltherScale {
    /** Lower end of the short form [m2/s], ASTM D341. */
    public static final double MIN_VISCOSITY = 0.21e-6;

    /** Upper end of the chart [m2/s], ASTM D341. */
    public static final double MAX_VISCOSITY = 20.0;

    private static final double LN10 = Math.log(10);
    private static final double MM2_PER_M2 = 1e6;

    /** Above this Z - 0.7 [mm2/s] the exponential is below 1e-28 and the inverse is exact without it. */
    private static final double EXPONENTIAL_FADED = 6;

    private WaltherScale() {}

    /** Z of a kinematic viscosity [mm2/s]. */
    static double shifted(double n) {
        return n + 0.7 + Math.exp(-1.47 - n * (1.84 + 0.51 * n));
    }

    /** W of a kinematic viscosity [m2/s]. */
    public static double scaled(double kinematicViscosity) {
        return Math.log10(Math.log10(shifted(kinematicViscosity * MM2_PER_M2)));
    }

    /** Kinematic viscosity [m2/s] of W: the published inverse, then one Newton step so that the round trip closes. */
    static double viscosity(double w) {
        double x = Math.exp(LN10 * Math.exp(LN10 * w)) - 0.7;
        if (x >= EXPONENTIAL_FADED) {
            return x / MM2_PER_M2;
        }
        double n = publishedInverse(x);
        return (n - (shifted(n) - x - 0.7) / shiftedSlope(n)) / MM2_PER_M2;
    }

    /** Kinematic viscosity [mm2/s] of x = Z - 0.7 by the published inverse; closes within 2e-4 mm2/s above 0.21. */
    static double publishedInverse(double x) {
        return x - Math.exp(-0.7487 + x * (-3.295 + x * (0.6119 - 0.3193 * x)));
    }

    /** d(ln nu)/dW [1] at a kinematic viscosity [m2/s]. */
    static double logSlope(double kinematicViscosity) {
        double n = kinematicViscosity * MM2_PER_M2;
        double z = shifted(n);
        return z * Math.log(z) * LN10 / (n * shiftedSlope(n));
    }

    private static double shiftedSlope(double n) {
        return 1 - (1.84 + 1.02 * n) * Math.exp(-1.47 - n * (1.84 + 0.51 * n));
    }

    /** Refuses two points [K], [m2/s] outside the scale or of which the warmer one is not thinner. */
    public static void requireFalling(double temperature1, double viscosity1, double temperature2, double viscosity2) {
        Require.positive("temperature", temperature1, "K");
        Require.positive("temperature", temperature2, "K");
        Require.within("kinematicViscosity", viscosity1, MIN_VISCOSITY, MAX_VISCOSITY, "m2/s");
        Require.within("kinematicViscosity", viscosity2, MIN_VISCOSITY, MAX_VISCOSITY, "m2/s");
        if (!((temperature2 - temperature1) * (viscosity1 - viscosity2) > 0)) {
            throw new IllegalArgumentException(
                    "kinematicViscosity must fall as the temperature rises, was " + viscosity1 + " m2/s at "
                            + temperature1 + " K and " + viscosity2 + " m2/s at " + temperature2 + " K");
        }
    }
}
