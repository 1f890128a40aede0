package org.coldpleat.validation.reference;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Textbook limits of the channel factor Phi (pack resistance over that of the medium alone) for solid channel walls,
 * sealed ends and free mouths: limits of the full model.
 *
 * <p>Symbols: pleat depth L [m], gap b [m], medium resistance R [1/m];
 * {@code lambda^2 = 48 L^2/(R b^3)} for equal gaps, {@code gamma = 24 L^2/(R b^3)} for one channel.
 */
@Validity("creeping flow, gaps above about 0.15 to 0.4 mm (slip and in-plane flow left out), gap/depth below 0.13")
@Source("derived here: plane Poiseuille channels with a Darcy wall; same structure as Bissett 1984, Chem. Eng. Sci. 39,"
        + " 1233 for wall-flow monoliths (from memory)")
public final class ChannelFactor {
    /** Below this channel parameter the series is more exact than the closed form in double arithmetic [1]. */
    private static final double SERIES_LIMIT = 1e-2;

    private ChannelFactor() {}

    /** Channel parameter lambda [1] of two equal gaps: {@code sqrt(48 L^2/(R b^3))}. */
    public static double channelParameter(double pleatDepth, double gap, double mediumResistance) {
        return Math.sqrt(2 * gamma(pleatDepth, gap, mediumResistance));
    }

    /** Parameter of one channel [1]: {@code gamma = 24 L^2/(R b^3)}. */
    public static double gamma(double pleatDepth, double gap, double mediumResistance) {
        return 24 * pleatDepth * pleatDepth / (mediumResistance * gap * gap * gap);
    }

    /**
     * Equal constant gaps: {@code Phi = lambda^2/4 + (lambda/2) coth(lambda/2)}.
     *
     * @param lambda [1], at least 0
     * @return [1]; 1.3319767 at lambda 1
     */
    public static double equalGaps(double lambda) {
        double square = lambda * lambda;
        if (lambda < SERIES_LIMIT) {
            return 1 + square / 3 - square * square / 720;
        }
        return square / 4 + lambda / 2 / Math.tanh(lambda / 2);
    }

    /**
     * Face velocity over its mean at a place along the leg, equal gaps:
     * {@code (lambda/2) cosh(lambda (s - 1/2))/sinh(lambda/2)}.
     *
     * @param lambda [1], at least 0
     * @param share s = x/L [1], 0 to 1
     */
    public static double equalGapsFaceVelocity(double lambda, double share) {
        if (lambda < 1e-6) {
            return 1;
        }
        double from = Math.abs(share - 0.5);
        // cosh/sinh with the large exponential taken out, so that long channels do not overflow
        double top = Math.exp(lambda * (from - 0.5)) + Math.exp(-lambda * (from + 0.5));
        return lambda / 2 * top / -Math.expm1(-lambda);
    }

    /**
     * Unequal constant gaps; symmetric in its arguments.
     *
     * @param upstreamGamma 24 L^2/(R b^3) of the upstream gap [1], at least 0
     * @param downstreamGamma of the downstream gap [1], at least 0
     * @return [1]; 1.6715915 for 0.2 and 2.0
     */
    public static double unequalGaps(double upstreamGamma, double downstreamGamma) {
        double square = upstreamGamma + downstreamGamma;
        double m = Math.sqrt(square);
        if (m < SERIES_LIMIT) {
            return 1 + square / 3;
        }
        // product + (sum of squares) coth(m) m ... written with coth and 1/sinh so that it does not overflow
        double coth = 1 / Math.tanh(m);
        double inverseSinh = 2 * Math.exp(-m) / -Math.expm1(-2 * m);
        double product = upstreamGamma * downstreamGamma;
        double squares = upstreamGamma * upstreamGamma + downstreamGamma * downstreamGamma;
        return product / square + (2 * product * inverseSinh + squares * coth) / (m * square);
    }

    /**
     * Upper bound for any taper, from evenly spread face velocity (minimum dissipation):
     * {@code 1 + int [g1 (1-s)^2 + g2 s^2] ds}; here for constant gaps, {@code 1 + (g1 + g2)/3}.
     */
    @Source("derived here: the true flow dissipates least of all that conserve mass")
    public static double uniformFluxBound(double upstreamGamma, double downstreamGamma) {
        return 1 + (upstreamGamma + downstreamGamma) / 3;
    }

    /**
     * Gap of least pressure drop for a flat panel of parallel legs at fixed depth, in the uniform-flux limit: positive
     * root of {@code b^4 - 2 K b - 3 K t = 0}, {@code K = 16 L^2/R}.
     *
     * @param pleatDepth L [m]
     * @param thickness t [m]
     * @param mediumResistance R [1/m]
     * @return gap b [m]
     */
    @Validity("pleat depth far above the gap; channel factor below about 1.6")
    public static double optimumGap(double pleatDepth, double thickness, double mediumResistance) {
        double k = 16 * pleatDepth * pleatDepth / mediumResistance;
        double gap = Math.cbrt(2 * k) + thickness;
        // Newton from above on a function that is convex there: falls monotonically to the root
        for (int i = 0; i < 100; i++) {
            double value = gap * (gap * gap * gap - 2 * k) - 3 * k * thickness;
            double next = gap - value / (4 * gap * gap * gap - 2 * k);
            if (!(Math.abs(next - gap) > 1e-14 * gap)) {
                return next;
            }
            gap = next;
        }
        return gap;
    }
}
