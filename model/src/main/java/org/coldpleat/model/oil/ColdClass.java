package org.coldpleat.model.oil;

import org.coldpleat.model.oil.curve.BiasedWaltherCurve;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * How far oils of a class lie below their Walther line in the cold: bias beta and half-width of the band that holds 95 of
 * 100 oils, {@code ln n = ln n_Walther - beta phi +- (0.03 + w phi)}, {@code phi = ((40 - t)/40)^2.7}; of oils with
 * polymer the half-width grows with the square instead.
 *
 * <p>Of the form only the coefficients of the mineral class were held out from the oils they are judged by; exponent, form
 * and limits of the classes were chosen with all fifteen oils in view. The half-widths of the two polymer classes are
 * judgement that holds all of the few oils at hand, those of the synthetic class rest on values from memory.
 */
@Source(
        "derived here from two handbook tables, NOAA oil library, product sheets (names withheld), a data set of Bates and"
                + " Watts 1988, and values of polyalphaolefins from memory")
@Validity("-40..40 degrees C; nothing measured below 0 degrees C for mineral oils")
enum ColdClass {
    /** Index below 120: heavy oils lie below their line, thin ones above. */
    MINERAL(0.15, 0.15, ColdClass.EXPONENT) {
        @Override
        double bias(double viscosity40) {
            double held = Math.min(Math.max(viscosity40, LEAST_VISCOSITY), GREATEST_VISCOSITY);
            return BIAS_AT_40 + BIAS_GROWTH * Math.log(held / UNIT_VISCOSITY);
        }
    },
    /** Index from 120 to 250, or a multigrade near 120: oils with viscosity improver. */
    POLYMER(0.20, 0.20, 2),
    /** Synthetic without viscosity improver, where the user says so. */
    SYNTHETIC(0.10, 0.10, ColdClass.EXPONENT) {
        @Override
        double bias(double viscosity40) {
            return BIAS_OF_SYNTHETICS;
        }
    },
    /** Index above 250: on their line or well above it. */
    HIGH_INDEX(0.25, 0.05, ColdClass.EXPONENT),
    /** Of which no class is known. */
    UNKNOWN(0.36, 0.36, ColdClass.EXPONENT);

    /** Growth of bias and of most half-widths toward the cold [1]. */
    static final double EXPONENT = 2.7;

    private static final double BIAS_AT_40 = -0.073;
    private static final double BIAS_GROWTH = 0.230;
    private static final double BIAS_OF_SYNTHETICS = 0.08;

    /** Kinematic viscosity at 40 degrees C at which mineral oils have {@code BIAS_AT_40} [m2/s]. */
    private static final double UNIT_VISCOSITY = 40e-6;

    /** Kinematic viscosities at 40 degrees C between which the bias follows the viscosity [m2/s]; constant beyond. */
    private static final double LEAST_VISCOSITY = 30e-6;

    private static final double GREATEST_VISCOSITY = 260e-6;

    private final double thicker;
    private final double thinner;
    private final double exponent;

    ColdClass(double thicker, double thinner, double exponent) {
        this.thicker = thicker;
        this.thinner = thinner;
        this.exponent = exponent;
    }

    /** Bias beta of ln(n) at 0 degrees C [1] of an oil with a kinematic viscosity at 40 degrees C [m2/s]. */
    double bias(double viscosity40) {
        return 0;
    }

    /** Half-width toward thicker oil at 0 degrees C, beside the floor of the line [1]. */
    double thicker() {
        return thicker;
    }

    /** Half-width toward thinner oil at 0 degrees C, beside the floor of the line [1]. */
    double thinner() {
        return thinner;
    }

    /** Exponent with which the half-widths grow toward the cold [1]. */
    double exponent() {
        return exponent;
    }

    /** How much of the half-width at 0 degrees C there is at a temperature [K]. */
    double growth(double temperature) {
        return BiasedWaltherCurve.growth(temperature, exponent);
    }
}
