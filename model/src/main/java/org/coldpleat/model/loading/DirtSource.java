package org.coldpleat.model.loading;

import java.util.Arrays;
import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * Dirt that comes into the oil: wear, soot lumps, road dust past the air cleaner, or dust injected on a stand.
 *
 * @param rate dirt mass coming in [kg/s], at least 0; a lot of dirt at once in {@link #lot}
 * @param sizes its size distribution
 */
public record DirtSource(double rate, ParticleSizes sizes) {
    public DirtSource {
        Objects.requireNonNull(sizes, "sizes");
        Require.notNegative("rate", rate, "kg/s");
    }

    /** The rate by size class [kg/s], double[classes.count()]; the classes must hold all of the dirt. */
    public double[] rates(SizeClasses classes) {
        return times(sizes.shares(classes), rate);
    }

    /** A lot of dirt [kg] of this kind by size class [kg], double[classes.count()]. */
    public double[] lot(double mass, SizeClasses classes) {
        return times(sizes.shares(classes), Require.notNegative("mass", mass, "kg"));
    }

    private static double[] times(double[] shares, double factor) {
        return Arrays.stream(shares).map(share -> share * factor).toArray();
    }
}
