package org.coldpleat.model.oil;

import java.util.function.DoubleUnaryOperator;

/**
 * What is not known about a viscosity curve: the standard uncertainty of ln(nu) as a smooth function of temperature,
 * fully correlated over temperature (one unknown moves the whole curve).
 *
 * <p>Held as a table in steps of 5 K over the domain of {@link Oil}; reading between its nodes errs by less than 5 % of
 * the uncertainty.
 */
public final class ViscosityBand {
    private static final double STEP = 5;

    private final SmoothTable table;

    private ViscosityBand(SmoothTable table) {
        this.table = table;
    }

    /** Tabulates a standard uncertainty of ln(nu) [1] given as a function of temperature [K]. */
    static ViscosityBand of(DoubleUnaryOperator lnSigma) {
        int count = (int) Math.round((Oil.MAX_TEMPERATURE - Oil.MIN_TEMPERATURE) / STEP) + 1;
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = Oil.MIN_TEMPERATURE + STEP * i;
            y[i] = lnSigma.applyAsDouble(x[i]);
        }
        return new ViscosityBand(new SmoothTable(x, y));
    }

    /** Standard uncertainty of ln(nu) [1] at a temperature [K]. */
    public double lnSigma(double temperature) {
        return Math.max(0, table.value(temperature));
    }

    /** Slope of the standard uncertainty [1/K] at a temperature [K]. */
    double slope(double temperature) {
        return table.value(temperature) > 0 ? table.slope(temperature) : 0;
    }
}
