package org.coldpleat.validation.reference;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Bias of mineral oils below 40 degrees C against the logarithm of their viscosity there, {@code beta = at40 + growth
 * ln(KV40/40)}, fitted by least squares to the biases of single oils. It serves to fit the coefficients of the law again
 * without the oil that is to be predicted.
 *
 * @param at40 bias of an oil of 40 mm2/s at 40 degrees C [1]
 * @param growth of the bias for each factor of e [1]
 */
@Source("derived here; least squares")
@Validity("oils of 30 to 260 mm2/s at 40 degrees C")
public record MineralBias(double at40, double growth) {
    /** Exponent with which the bias grows toward the cold [1]. */
    private static final double EXPONENT = 2.7;

    /** How much of the bias there is at a temperature [degrees C]: 0 from 40 upward, 1 at 0. */
    public static double growth(double celsius) {
        return celsius >= 40 ? 0 : Math.pow((40 - celsius) / 40, EXPONENT);
    }

    /**
     * The bias that leaves the least squares between the line of one oil and what was measured.
     *
     * @param celsius temperatures of the measured points [degrees C]
     * @param lnMissed ln of what the line gives over what was measured, there [1]
     */
    public static double ofOil(double[] celsius, double[] lnMissed) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < celsius.length; i++) {
            product += growth(celsius[i]) * lnMissed[i];
            square += growth(celsius[i]) * growth(celsius[i]);
        }
        return product / square;
    }

    /**
     * The line through the biases of several oils.
     *
     * @param viscosities40 kinematic viscosities at 40 degrees C [mm2/s], of which at least two differ
     * @param biases of the same oils [1]
     */
    public static MineralBias fittedTo(double[] viscosities40, double[] biases) {
        int n = biases.length;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < n; i++) {
            double ln = Math.log(viscosities40[i] / 40);
            x += ln;
            y += biases[i];
            xx += ln * ln;
            xy += ln * biases[i];
        }
        double slope = (n * xy - x * y) / (n * xx - x * x);
        return new MineralBias((y - slope * x) / n, slope);
    }

    /** Bias of an oil with a kinematic viscosity at 40 degrees C [mm2/s]. */
    public double of(double viscosity40) {
        return at40 + growth * Math.log(viscosity40 / 40);
    }
}
