package org.coldpleat.model.oil;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.coldpleat.model.numerics.MonotoneCubic;
import org.coldpleat.model.oil.curve.ViscosityCurve;

/**
 * What is not known about a viscosity curve: the standard uncertainty of ln(n) toward thicker and toward thinner oil as
 * smooth functions of temperature, fully correlated over temperature (one unknown moves the whole curve).
 *
 * <p>Held as tables in steps of 2.5 K over the domain of {@link Oil}; reading between their nodes errs by less than 10 %
 * of the uncertainty beside a cold anchor and 1 % elsewhere.
 *
 * <p>Every oil thins as it warms, the ones at the edge of the band too. So the uncertainty grows with temperature (thicker)
 * or toward the cold (thinner) by no more than a quarter of what the curve itself falls by; where a rule asks for more, as
 * that of an unknown class does below about -25 degrees C, the band is narrower than the rule.
 */
public final class ViscosityBand {
    private static final double STEP = 2.5;

    /** Least distance of a regular node from a kink [K]. */
    private static final double LEAST_STEP = 0.5;

    /** Standard deviations up to which the curve still falls [1]. */
    private static final double FALLS_TO = 4;

    private final MonotoneCubic thicker;
    private final MonotoneCubic thinner;

    private ViscosityBand(MonotoneCubic thicker, MonotoneCubic thinner) {
        this.thicker = thicker;
        this.thinner = thinner;
    }

    /**
     * Tabulates standard uncertainties of ln(n) [1] given as functions of temperature [K].
     *
     * @param curve central curve
     * @param thicker the uncertainty toward thicker oil
     * @param thinner the uncertainty toward thinner oil
     * @param kinks temperatures at which they bend sharply [K]; inside the domain they become nodes
     */
    static ViscosityBand of(
            ViscosityCurve curve, DoubleUnaryOperator thicker, DoubleUnaryOperator thinner, double[] kinks) {
        double[] x = nodes(kinks);
        double[] fall = new double[x.length - 1];
        for (int i = 0; i < fall.length; i++) {
            fall[i] = Math.log(curve.kinematicViscosity(x[i]) / curve.kinematicViscosity(x[i + 1])) / FALLS_TO;
        }
        double[] up = DoubleStream.of(x).map(thicker).toArray();
        for (int i = 1; i < x.length; i++) {
            up[i] = Math.min(up[i], up[i - 1] + fall[i - 1]);
        }
        double[] down = DoubleStream.of(x).map(thinner).toArray();
        for (int i = x.length - 2; i >= 0; i--) {
            down[i] = Math.min(down[i], down[i + 1] + fall[i]);
        }
        return new ViscosityBand(new MonotoneCubic(x, up), new MonotoneCubic(x, down));
    }

    private static double[] nodes(double[] kinks) {
        double[] inside = DoubleStream.of(kinks)
                .filter(kink -> kink > Oil.MIN_TEMPERATURE + LEAST_STEP && kink < Oil.MAX_TEMPERATURE - LEAST_STEP)
                .toArray();
        int count = (int) Math.round((Oil.MAX_TEMPERATURE - Oil.MIN_TEMPERATURE) / STEP);
        return DoubleStream.concat(
                        DoubleStream.of(inside),
                        IntStream.rangeClosed(0, count)
                                .mapToDouble(i -> Oil.MIN_TEMPERATURE + STEP * i)
                                .filter(node ->
                                        DoubleStream.of(inside).noneMatch(kink -> Math.abs(kink - node) < LEAST_STEP)))
                .sorted()
                .toArray();
    }

    /** Standard uncertainty of ln(n) toward thicker oil [1] at a temperature [K]. */
    public double thicker(double temperature) {
        return Math.max(0, thicker.value(temperature));
    }

    /** Standard uncertainty of ln(n) toward thinner oil [1] at a temperature [K]. */
    public double thinner(double temperature) {
        return Math.max(0, thinner.value(temperature));
    }

    /** The one of the two on the side of a number of standard deviations, times that number [1]. */
    double moved(double deviations, double temperature) {
        return deviations * (deviations > 0 ? thicker(temperature) : thinner(temperature));
    }

    /** Slope of {@link #moved} [1/K]. */
    double movedSlope(double deviations, double temperature) {
        MonotoneCubic side = deviations > 0 ? thicker : thinner;
        return side.value(temperature) > 0 ? deviations * side.slope(temperature) : 0;
    }
}
