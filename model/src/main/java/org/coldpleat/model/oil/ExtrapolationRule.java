package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import org.coldpleat.model.numerics.MonotoneCubic;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * How far real oils lie from a Walther line through 40 and 100 degrees C, as a standard uncertainty of ln(nu).
 *
 * <p>The rule, read as bands that hold 95 of 100 oils: 3 % from 25 to 150 degrees C, 6 % at 15 to 20, 15 % at 0, a factor
 * of 0.7 to 1.4 at -20 and of 0.5 to 2 at -40. Oils with much polymer or wax lie above the line, heavy and wax-free ones
 * below.
 *
 * <p>An anchor colder than 40 degrees C takes off what the rule says at it; one warmer than 40 degrees C moves the rule
 * up by the distance. An oil heavier than 120 mm2/s at 40 degrees C moves it up by 20 K for each factor of e, so that a
 * heavy oil may be 35 % off at 0 degrees C. More than 50 K above the highest anchor the band grows again, to twice its width at 100 K.
 */
@Source("derived here from product sheets (names withheld), handbook tables and Mylona et al. 2014; reading between"
        + " its points is common practice, no source")
@Validity("-40..150 degrees C; goes on linearly outside")
final class ExtrapolationRule {
    /** Half-width of ln(nu) wherever the line is good [1]. */
    static final double FLOOR = Math.log(1.03);

    private static final double WARM_ANCHOR = 313.15;

    /** Viscosity at 40 degrees C above which an oil counts as heavy [m2/s]. */
    private static final double HEAVY = 120e-6;

    /** Rise of the rule for each factor of e above that [K]; from one heavy oil, handbook table. */
    private static final double HEAVY_RISE = 20;

    private static final double HOT_REACH = 50;

    /** Half-widths of ln(nu) at -40, -20, 0, 17.5, 25 and 150 degrees C. */
    private static final MonotoneCubic HALF_WIDTH = new MonotoneCubic(
            new double[] {233.15, 253.15, 273.15, 290.65, 298.15, 423.15},
            new double[] {Math.log(2), Math.log(1.4 / 0.7) / 2, Math.log(1.15), Math.log(1.06), FLOOR, FLOOR});

    private ExtrapolationRule() {}

    /**
     * Standard uncertainty of ln(nu) [1].
     *
     * @param temperature [K]
     * @param lowestAnchor coldest point of the curve [K]
     * @param highestAnchor hottest point of the curve [K]
     * @param viscosity40 kinematic viscosity at 40 degrees C [m2/s]
     */
    static double lnSigma(double temperature, double lowestAnchor, double highestAnchor, double viscosity40) {
        if (temperature >= lowestAnchor) {
            double beyond = Math.max(0, temperature - highestAnchor - HOT_REACH);
            return FLOOR * (1 + beyond / HOT_REACH) / COVERAGE_95;
        }
        double heavy = HEAVY_RISE * Math.max(0, Math.log(viscosity40 / HEAVY));
        double raise = heavy + Math.max(0, lowestAnchor - WARM_ANCHOR);
        double credit = HALF_WIDTH.value(Math.min(lowestAnchor, WARM_ANCHOR) - heavy) - FLOOR;
        return Math.max(FLOOR, HALF_WIDTH.value(temperature - raise) - credit) / COVERAGE_95;
    }

    /** The rule for an oil of which only the grade is known: moved so that its cold end lies at {@code coldEnd} [K]. */
    static double lnSigmaOfGrade(double temperature, double coldEnd) {
        return HALF_WIDTH.value(temperature - (coldEnd - Oil.MIN_TEMPERATURE)) / COVERAGE_95;
    }
}
