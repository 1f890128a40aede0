package org.coldpleat.model.oil.curve;

import java.util.Optional;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Bent Walther line {@code W = a0 + a1 x + a2 x^2}, {@code x = log10 T}: the second opinion beside the Vogel curve from
 * which the band between a cold anchor and the warm points is taken.
 *
 * @param a0 [1]
 * @param a1 [1]
 * @param a2 [1]
 */
@Source("derived here, on the scale of ASTM D341-09(2015)")
@Validity("from the coldest to the hottest point it was made from; goes on smoothly outside")
public record QuadraticWaltherCurve(double a0, double a1, double a2) implements ViscosityCurve {
    private static final double LN10 = Math.log(10);

    /** Range over which the curve must fall [K]: -45 to 150 degrees C. */
    private static final double CHECKED_FROM = 228.15;

    private static final double CHECKED_TO = 423.15;

    public QuadraticWaltherCurve {
        if (!Double.isFinite(a0 + a1 + a2)) {
            throw new IllegalArgumentException(
                    "quadratic Walther constants must be finite, were " + a0 + ", " + a1 + ", " + a2);
        }
    }

    /** The curve through three points [K, m2/s]; empty if it does not fall everywhere from -45 to 150 degrees C. */
    public static Optional<QuadraticWaltherCurve> through(
            double temperature1,
            double viscosity1,
            double temperature2,
            double viscosity2,
            double temperature3,
            double viscosity3) {
        double x1 = Math.log10(temperature1);
        double x2 = Math.log10(temperature2);
        double x3 = Math.log10(temperature3);
        double w1 = WaltherScale.scaled(viscosity1);
        double slope12 = (WaltherScale.scaled(viscosity2) - w1) / (x2 - x1);
        double slope13 = (WaltherScale.scaled(viscosity3) - w1) / (x3 - x1);
        double a2 = (slope13 - slope12) / (x3 - x2);
        double a1 = slope12 - a2 * (x1 + x2);
        double a0 = w1 - x1 * (a1 + a2 * x1);
        if (!Double.isFinite(a0 + a1 + a2)
                || !(a1 + 2 * a2 * Math.log10(CHECKED_FROM) < 0)
                || !(a1 + 2 * a2 * Math.log10(CHECKED_TO) < 0)) {
            return Optional.empty();
        }
        return Optional.of(new QuadraticWaltherCurve(a0, a1, a2));
    }

    @Override
    public double kinematicViscosity(double temperature) {
        double x = Math.log10(temperature);
        return WaltherScale.viscosity(a0 + x * (a1 + a2 * x));
    }

    @Override
    public double logSlope(double temperature) {
        double slope = a1 + 2 * a2 * Math.log10(temperature);
        return slope / (temperature * LN10) * WaltherScale.logSlope(kinematicViscosity(temperature));
    }
}
