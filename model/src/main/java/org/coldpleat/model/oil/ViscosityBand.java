package org.coldpleat.model.oil;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.coldpleat.model.numerics.MonotoneCubic;

/**
 * What is not known about a viscosity curve: the standard uncertainty of ln(nu) as a smooth function of temperature,
 * fully correlated over temperature (one unknown moves the whole curve).
 *
 * <p>Held as a table in steps of 2.5 K over the domain of {@link Oil}; reading between its nodes errs by less than 10 %
 * of the uncertainty beside a cold anchor and 1 % elsewhere.
 */
public final class ViscosityBand {
    private static final double STEP = 2.5;

    /** Least distance of a regular node from a kink [K]. */
    private static final double LEAST_STEP = 0.5;

    private final MonotoneCubic table;

    private ViscosityBand(MonotoneCubic table) {
        this.table = table;
    }

    /**
     * Tabulates a standard uncertainty of ln(nu) [1] given as a function of temperature [K].
     *
     * @param lnSigma the function
     * @param kinks temperatures at which it bends sharply [K]; inside the domain they become nodes
     */
    static ViscosityBand of(DoubleUnaryOperator lnSigma, double[] kinks) {
        double[] inside = DoubleStream.of(kinks)
                .filter(kink -> kink > Oil.MIN_TEMPERATURE + LEAST_STEP && kink < Oil.MAX_TEMPERATURE - LEAST_STEP)
                .toArray();
        int count = (int) Math.round((Oil.MAX_TEMPERATURE - Oil.MIN_TEMPERATURE) / STEP);
        double[] x = DoubleStream.concat(
                        DoubleStream.of(inside),
                        IntStream.rangeClosed(0, count)
                                .mapToDouble(i -> Oil.MIN_TEMPERATURE + STEP * i)
                                .filter(node ->
                                        DoubleStream.of(inside).noneMatch(kink -> Math.abs(kink - node) < LEAST_STEP)))
                .sorted()
                .toArray();
        return new ViscosityBand(
                new MonotoneCubic(x, DoubleStream.of(x).map(lnSigma).toArray()));
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
