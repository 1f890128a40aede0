package org.coldpleat.model.run;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

/**
 * A computed value with its standard uncertainty, in coherent SI.
 *
 * @param value best estimate [SI]
 * @param standardUncertainty first-order propagated standard uncertainty [SI], at least 0
 */
public record Band(double value, double standardUncertainty) {
    /** Half-width over value from which on the band of a positive value is told by a factor [1]. */
    private static final double WIDE = 0.3;

    /** A value without uncertainty. */
    public static Band exact(double value) {
        return new Band(value, 0);
    }

    /** Lower end of the 95 % band [SI]. */
    public double low() {
        return value - COVERAGE_95 * standardUncertainty;
    }

    /** Upper end of the 95 % band [SI]. */
    public double high() {
        return value + COVERAGE_95 * standardUncertainty;
    }

    /**
     * True if the band of a value that cannot be negative is so wide that its ends are better taken as a factor: plus and
     * minus would reach below what can be.
     */
    public boolean isWide() {
        return value > 0 && COVERAGE_95 * standardUncertainty > WIDE * value;
    }

    /** Lower end of the 95 % band of a positive value, symmetrical in the logarithm [SI]. */
    public double lowByFactor() {
        return lowByFactor(0);
    }

    /** Upper end of the 95 % band of a positive value, symmetrical in the logarithm [SI]. */
    public double highByFactor() {
        return highByFactor(0);
    }

    /**
     * Lower end of the 95 % band of a value that cannot be below a least one, symmetrical in the logarithm of what is above
     * that [SI].
     *
     * @param least [SI], at most the value
     */
    public double lowByFactor(double least) {
        return value > least ? least + (value - least) / factor(least) : least;
    }

    /** Upper end of the same band [SI]. */
    public double highByFactor(double least) {
        return value > least ? least + (value - least) * factor(least) : high();
    }

    private double factor(double least) {
        return Math.exp(COVERAGE_95 * standardUncertainty / (value - least));
    }
}
