package org.coldpleat.model.loading;

import java.util.Arrays;
import org.coldpleat.shared.quantity.Require;

/**
 * A size distribution of a dust by volume (for one density also by mass): the share that is finer than a size, straight
 * between the given points over the logarithm of the size.
 *
 * @param size particle sizes [m], double[k], k at least 2, ascending, above 0
 * @param finer volume share finer than that size [1], double[k], not falling, from 0 to 1
 */
public record ParticleSizes(double[] size, double[] finer) {
    public ParticleSizes {
        size = size.clone();
        finer = finer.clone();
        Require.entries("finer", finer.length, size.length);
        Require.atLeast("number of points", size.length, 2, "1");
        for (int i = 0; i < size.length; i++) {
            Require.above("size " + i, size[i], i == 0 ? 0 : size[i - 1], "m");
            Require.within("finer " + i, finer[i], 0, 1, "1");
            if (i > 0 && finer[i] < finer[i - 1]) {
                throw new IllegalArgumentException(
                        "finer must not fall with size, fell from " + finer[i - 1] + " to " + finer[i] + " [1]");
            }
        }
        if (finer[0] != 0 || finer[finer.length - 1] != 1) {
            throw new IllegalArgumentException(
                    "finer must start at 0 and end at 1 [1], was " + finer[0] + " and " + finer[finer.length - 1]);
        }
    }

    @Override
    public double[] size() {
        return size.clone();
    }

    @Override
    public double[] finer() {
        return finer.clone();
    }

    /** Size below which there is no dust at all [m]. */
    public double finest() {
        int i = 0;
        while (finer[i + 1] == 0) {
            i++;
        }
        return size[i];
    }

    /** Size above which there is no dust at all [m]. */
    public double coarsest() {
        int i = size.length - 1;
        while (finer[i - 1] == 1) {
            i--;
        }
        return size[i];
    }

    /** Volume share finer than a size [m, above 0]: 0 below the finest, 1 above the coarsest. */
    public double finerThan(double diameter) {
        Require.positive("diameter", diameter, "m");
        if (diameter <= size[0]) {
            return 0;
        }
        int i = 1;
        while (i < size.length && size[i] < diameter) {
            i++;
        }
        if (i == size.length) {
            return 1;
        }
        double place = Math.log(diameter / size[i - 1]) / Math.log(size[i] / size[i - 1]);
        return finer[i - 1] + place * (finer[i] - finer[i - 1]);
    }

    /** Size that a volume share [0..1] is finer than [m]. */
    public double quantile(double volumeShare) {
        Require.within("volumeShare", volumeShare, 0, 1, "1");
        int i = 1;
        while (i < size.length - 1 && finer[i] < volumeShare) {
            i++;
        }
        double step = finer[i] - finer[i - 1];
        double place = step == 0 ? 0 : (volumeShare - finer[i - 1]) / step;
        return size[i - 1] * Math.pow(size[i] / size[i - 1], place);
    }

    /** Classes evenly spaced in the logarithm that hold all of this dust. */
    public SizeClasses classes(int count) {
        return SizeClasses.logSpaced(finest(), coarsest(), count);
    }

    /**
     * Volume share of each class [1], double[classes.count()], summing to 1.
     *
     * @throws IllegalArgumentException if some of the dust lies outside the classes: no mass is dropped or moved
     */
    public double[] shares(SizeClasses classes) {
        double below = finerThan(classes.lower(0));
        double above = 1 - finerThan(classes.upper(classes.count() - 1));
        if (below > 0 || above > 0) {
            throw new IllegalArgumentException("classes must hold all of the dust: share " + below
                    + " [1] is finer than the lowest edge, " + above + " [1] coarser than the highest");
        }
        double[] shares = new double[classes.count()];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = finerThan(classes.upper(i)) - finerThan(classes.lower(i));
        }
        return shares;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ParticleSizes that
                && Arrays.equals(size, that.size)
                && Arrays.equals(finer, that.finer);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(size) + Arrays.hashCode(finer);
    }

    @Override
    public String toString() {
        return "ParticleSizes[" + size.length + " points, " + finest() + " m to " + coarsest() + " m]";
    }
}
