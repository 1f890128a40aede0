package org.coldpleat.model.oil;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.oil.curve.BiasedWaltherCurve;

/**
 * The two points that a curve of two points goes through.
 *
 * @param low temperature of the colder one [K]
 * @param lowViscosity kinematic viscosity there [m2/s]
 * @param high temperature of the warmer one [K]
 * @param highViscosity kinematic viscosity there [m2/s]
 */
record LinePair(double low, double lowViscosity, double high, double highViscosity) {
    private static final double TEMPERATURE_40 = 313.15;

    private static final double BIAS_TOLERANCE = 1e-12;

    /** The curve with a stated bias [1]; empty if no line goes through the points without it. */
    Optional<BiasedWaltherCurve> curve(double bias, double exponent) {
        return BiasedWaltherCurve.through(low, lowViscosity, high, highViscosity, bias, exponent);
    }

    /**
     * The curve of a class. Its bias follows from the viscosity at 40 degrees C, which with a point below that follows from
     * the bias: the bias that agrees with itself is looked for.
     */
    Optional<BiasedWaltherCurve> curve(ColdClass coldClass) {
        double least = coldClass.bias(0);
        double greatest = coldClass.bias(Double.POSITIVE_INFINITY);
        if (least == greatest) {
            return curve(least, ColdClass.EXPONENT);
        }
        OptionalDouble bias = BracketedRoot.brent(
                trial -> curve(trial, ColdClass.EXPONENT)
                        .map(curve -> coldClass.bias(curve.kinematicViscosity(TEMPERATURE_40)) - trial)
                        .orElse(Double.NaN),
                least,
                greatest,
                BIAS_TOLERANCE);
        return bias.isPresent() ? curve(bias.getAsDouble(), ColdClass.EXPONENT) : Optional.empty();
    }

    /** True if both points lie below 40 degrees C, so that the curve is read upward. */
    boolean isCold() {
        return high < BiasedWaltherCurve.BIAS_BEGINS;
    }
}
