package org.coldpleat.model.oil.curve;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Vogel curve strictly below the lower warm point, the curve of the two warm points at and above it. Continuous at the joint; the relative
 * slope changes there by a few percent of itself.
 *
 * @param cold curve below the joint
 * @param warm curve at and above the joint
 * @param joint temperature of the lower warm point [K]
 */
@Source("common practice, no source; each part see its class")
@Validity("from the cold anchor to 150 degrees C; goes on smoothly outside")
public record ColdAnchoredCurve(VogelCurve cold, ViscosityCurve warm, double joint) implements ViscosityCurve {
    /** Largest step that the viscosity may make at the joint [1]; rounding only. */
    private static final double JOINT_TOLERANCE = 1e-9;

    public ColdAnchoredCurve {
        Objects.requireNonNull(cold, "cold");
        Objects.requireNonNull(warm, "warm");
        double ratio = cold.kinematicViscosity(joint) / warm.kinematicViscosity(joint);
        if (!(Math.abs(ratio - 1) <= JOINT_TOLERANCE)) {
            throw new IllegalArgumentException("the two parts must meet at " + joint + " K, their ratio is " + ratio);
        }
    }

    /**
     * The curve through a cold point and two warm ones, temperatures in rising order; empty if no sound Vogel curve goes
     * through them ({@link VogelCurve#through}).
     */
    public static Optional<ColdAnchoredCurve> through(
            double coldTemperature,
            double coldViscosity,
            double lowTemperature,
            double lowViscosity,
            double highTemperature,
            double highViscosity) {
        return below(
                WaltherCurve.through(lowTemperature, lowViscosity, highTemperature, highViscosity),
                coldTemperature,
                coldViscosity,
                lowTemperature,
                highTemperature);
    }

    /**
     * The same with another curve through the two warm points.
     *
     * @param warm curve at and above the lower warm point
     * @param coldTemperature of the cold point [K]
     * @param coldViscosity kinematic viscosity there [m2/s]
     * @param lowTemperature of the lower warm point [K]
     * @param highTemperature of the upper warm point [K]
     */
    public static Optional<ColdAnchoredCurve> below(
            ViscosityCurve warm,
            double coldTemperature,
            double coldViscosity,
            double lowTemperature,
            double highTemperature) {
        return VogelCurve.through(
                        coldTemperature,
                        coldViscosity,
                        lowTemperature,
                        warm.kinematicViscosity(lowTemperature),
                        highTemperature,
                        warm.kinematicViscosity(highTemperature))
                .map(cold -> new ColdAnchoredCurve(cold, warm, lowTemperature));
    }

    @Override
    public double kinematicViscosity(double temperature) {
        return part(temperature).kinematicViscosity(temperature);
    }

    @Override
    public double logSlope(double temperature) {
        return part(temperature).logSlope(temperature);
    }

    private ViscosityCurve part(double temperature) {
        return temperature < joint ? cold : warm;
    }
}
