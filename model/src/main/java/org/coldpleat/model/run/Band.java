package org.coldpleat.model.run;

/**
 * A computed value with its standard uncertainty, in coherent SI.
 *
 * @param value best estimate [SI]
 * @param standardUncertainty first-order propagated standard uncertainty [SI], at least 0
 */
public record Band(double value, double standardUncertainty) {
    /** Two-sided 95 % coverage factor of the normal distribution (JCGM 100:2008, table G.1). */
    private static final double COVERAGE_95 = 1.96;

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
}
