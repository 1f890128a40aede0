package org.coldpleat.model.change;

import java.util.Objects;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;

/**
 * Dirt that a filter has caught, spread evenly over its medium.
 *
 * @param mass [kg], at least 0
 * @param law how the resistance of the medium grows with it
 * @param lnSigma standard uncertainty of the logarithm of that growth [1]
 */
public record DirtLoad(double mass, BlockingLaw law, double lnSigma) {
    /** Ratio of loaded to clean medium at which a filter counts as full [1]. */
    public static final double FULL_RATIO = CapacityBuilder.TYPICAL_END_RATIO;

    public DirtLoad {
        Objects.requireNonNull(law, "law");
        if (!(mass >= 0) || Double.isInfinite(mass)) {
            throw new IllegalArgumentException("mass must be finite and at least 0 kg, was " + mass);
        }
    }

    /** The same with the growth of the resistance moved by a number of standard uncertainties. */
    public DirtLoad moved(double deviations) {
        double factor = Math.exp(deviations * lnSigma);
        return new DirtLoad(mass, new BlockingLaw(law.exponent(), law.coefficient() * factor), lnSigma);
    }

    /** How many times its clean value the medium resists on an area [m2]; infinite if plugged. */
    double ratio(double area) {
        return law.resistanceRatio(mass / area);
    }
}
