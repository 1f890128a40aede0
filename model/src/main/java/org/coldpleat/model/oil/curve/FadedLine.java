package org.coldpleat.model.oil.curve;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Walther line through the warm points, times the factor by which it misses the cold anchor, fading out toward the lower
 * warm point with the fourth power of the distance from it.
 *
 * <p>The power is a fit: 3.7 to 3.8 for a heavy engine oil (handbook table) and a hydraulic oil (maker's sheet), whose
 * misses have opposite signs. It serves for a band only.
 *
 * @param line through the warm points
 * @param joint temperature of the lower warm point [K]
 * @param cold temperature of the cold anchor [K], below the joint
 * @param lnMisfit ln(nu) of the cold anchor over that of the line [1]
 */
@Source("derived here")
@Validity("from the cold anchor to the joint; at and above the joint the line itself")
public record FadedLine(WaltherCurve line, double joint, double cold, double lnMisfit) implements ViscosityCurve {
    public static FadedLine through(WaltherCurve line, double joint, double cold, double coldViscosity) {
        return new FadedLine(line, joint, cold, Math.log(coldViscosity / line.kinematicViscosity(cold)));
    }

    @Override
    public double kinematicViscosity(double temperature) {
        double share = share(temperature);
        return line.kinematicViscosity(temperature) * Math.exp(lnMisfit * share * share * share * share);
    }

    @Override
    public double logSlope(double temperature) {
        double share = share(temperature);
        return line.logSlope(temperature) - 4 * lnMisfit * share * share * share / (joint - cold);
    }

    private double share(double temperature) {
        return Math.max(0, (joint - temperature) / (joint - cold));
    }
}
