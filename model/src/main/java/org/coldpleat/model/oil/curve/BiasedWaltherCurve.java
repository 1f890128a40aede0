package org.coldpleat.model.oil.curve;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Walther line with the bias that oils of a class show below 40 degrees C:
 * {@code ln n = ln n_Walther - beta ((40 - t)/40)^exponent} there, the line itself at and above 40 degrees C. Value and
 * slope are continuous for exponents above 1.
 *
 * <p>Worked example: 248.5 mm2/s at 40 degrees C and 20.45 at 100 with a bias of 0.3469 give 4492 mm2/s at 0 degrees C.
 *
 * @param line the line [m2/s]
 * @param beta bias of ln n at 0 degrees C [1], above 0 where oils are thinner than the line
 * @param exponent growth of the bias toward the cold [1], above 1
 */
@Source("line: ASTM D341-09(2015); form of the bias derived here from handbook tables and laboratory values")
@Validity("-40..150 degrees C; goes on smoothly outside")
public record BiasedWaltherCurve(WaltherCurve line, double beta, double exponent) implements ViscosityCurve {
    /** Temperature below which oils leave the line [K]: 40 degrees C. */
    public static final double BIAS_BEGINS = 313.15;

    /** Distance below that at which the bias is beta [K]. */
    private static final double UNIT_DISTANCE = 40;

    public BiasedWaltherCurve {
        Objects.requireNonNull(line, "line");
        if (!Double.isFinite(beta)) {
            throw new IllegalArgumentException("beta must be finite, was " + beta);
        }
        if (!(exponent > 1) || Double.isInfinite(exponent)) {
            throw new IllegalArgumentException("exponent must be finite and above 1, was " + exponent);
        }
    }

    /**
     * The curve with a given bias through two points; empty if no falling line goes through them once the bias is taken
     * off.
     *
     * @param lowTemperature [K], above 0
     * @param lowViscosity kinematic viscosity there [m2/s]
     * @param highTemperature [K], above the low one
     * @param highViscosity kinematic viscosity there [m2/s], below the other
     * @param beta bias [1]
     * @param exponent growth of the bias [1]
     */
    public static Optional<BiasedWaltherCurve> through(
            double lowTemperature,
            double lowViscosity,
            double highTemperature,
            double highViscosity,
            double beta,
            double exponent) {
        double low = lowViscosity * Math.exp(beta * growth(lowTemperature, exponent));
        double high = highViscosity * Math.exp(beta * growth(highTemperature, exponent));
        if (!(low > high && high >= WaltherScale.MIN_VISCOSITY && low <= WaltherScale.MAX_VISCOSITY)) {
            return Optional.empty();
        }
        return Optional.of(new BiasedWaltherCurve(
                WaltherCurve.through(lowTemperature, low, highTemperature, high), beta, exponent));
    }

    /** How much of beta the bias is at a temperature [K]: 0 from 40 degrees C upward, 1 at 0 degrees C. */
    public static double growth(double temperature, double exponent) {
        return temperature >= BIAS_BEGINS ? 0 : Math.pow((BIAS_BEGINS - temperature) / UNIT_DISTANCE, exponent);
    }

    @Override
    public double kinematicViscosity(double temperature) {
        double unbiased = line.kinematicViscosity(temperature);
        return temperature >= BIAS_BEGINS || beta == 0
                ? unbiased
                : unbiased * Math.exp(-beta * growth(temperature, exponent));
    }

    @Override
    public double logSlope(double temperature) {
        double slope = line.logSlope(temperature);
        return temperature >= BIAS_BEGINS
                ? slope
                : slope + beta * exponent * growth(temperature, exponent - 1) / UNIT_DISTANCE;
    }
}
