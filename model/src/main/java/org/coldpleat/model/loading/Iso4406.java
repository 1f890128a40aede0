package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.coldpleat.shared.table.CsvTable;

/**
 * Cleanliness code of an oil: scale numbers of the particle counts at and above 4, 6 and 14 um(c).
 *
 * @param at4 scale number at and above 4 um(c), 0 to {@link #ABOVE_TABLE}
 * @param at6 at and above 6 um(c)
 * @param at14 at and above 14 um(c)
 */
@Source("ISO 4406:1999, table 1; limits in the head of the table")
@Validity(
        "spheres of stated density; real grains seen by a counter differ in size from spheres of the same volume. Below"
                + " scale 8 a counted code depends on the number of particles in the sample")
public record Iso4406(int at4, int at6, int at14) {
    /** Stands for a count above the last limit of the table, written >28. */
    public static final int ABOVE_TABLE = 29;

    /** Sizes of the three scale numbers [m]. */
    private static final double[] SIZES = {4e-6, 6e-6, 14e-6};

    /** Particles in a cubic meter for one in a milliliter. */
    private static final double PER_MILLILITER = 1e6;

    private static final double[] LIMITS = CsvTable.columns(Iso4406.class, "iso4406_scale.csv", "up_to_per_mL")[0];

    public Iso4406 {
        for (int scale : new int[] {at4, at6, at14}) {
            if (scale < 0 || scale > ABOVE_TABLE) {
                throw new IllegalArgumentException("scale number must lie in 0..29 [1], was " + scale);
            }
        }
        if (at6 > at4 || at14 > at6) {
            throw new IllegalArgumentException(
                    "scale numbers must not rise with size, were " + at4 + ", " + at6 + ", " + at14 + " [1]");
        }
    }

    /** Scale number of a count [1/mL, at least 0]; {@link #ABOVE_TABLE} beyond the table. */
    public static int scale(double countPerMilliliter) {
        Require.notNegative("countPerMilliliter", countPerMilliliter, "1/mL");
        int scale = 0;
        while (scale < LIMITS.length && countPerMilliliter > LIMITS[scale]) {
            scale++;
        }
        return scale;
    }

    /** Code of three counts at and above 4, 6 and 14 um(c) [1/mL]. */
    public static Iso4406 ofCounts(double from4, double from6, double from14) {
        return new Iso4406(scale(from4), scale(from6), scale(from14));
    }

    /**
     * Code of an oil that carries dirt of known sizes.
     *
     * @param classes size classes
     * @param concentration dirt mass per oil volume and class [kg/m3], double[classes.count()]
     * @param grainDensity of the dirt [kg/m3], above 0
     */
    public static Iso4406 ofDirt(SizeClasses classes, double[] concentration, double grainDensity) {
        double[] counts = new double[SIZES.length];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = count(classes, concentration, grainDensity, SIZES[i]) / PER_MILLILITER;
        }
        return ofCounts(counts[0], counts[1], counts[2]);
    }

    /**
     * Number of spheres at and above a size per oil volume [1/m3]. In each class the volume lies evenly over the
     * logarithm of the size: a class from a to b with mass concentration c holds {@code 6 c (s^-3 - b^-3)/(3 pi rho
     * ln(b/a))} spheres above s.
     *
     * @param classes size classes
     * @param concentration dirt mass per oil volume and class [kg/m3], double[classes.count()], at least 0
     * @param grainDensity [kg/m3], above 0
     * @param size [m], above 0
     */
    @Source("derived here")
    public static double count(SizeClasses classes, double[] concentration, double grainDensity, double size) {
        Require.entries("concentration", concentration.length, classes.count());
        Require.positive("grainDensity", grainDensity, "kg/m3");
        Require.positive("size", size, "m");
        double sum = 0;
        for (int i = 0; i < concentration.length; i++) {
            double from = Math.max(size, classes.lower(i));
            double to = classes.upper(i);
            if (from < to) {
                double spheres = (Math.pow(from, -3) - Math.pow(to, -3)) / (3 * Math.log(to / classes.lower(i)));
                sum += Require.notNegative("concentration", concentration[i], "kg/m3") * spheres;
            }
        }
        return 6 * sum / (Math.PI * grainDensity);
    }

    /** The three scale numbers as written in the trade, such as {@code 18/16/13}. */
    public String written() {
        return text(at4) + "/" + text(at6) + "/" + text(at14);
    }

    private static String text(int scale) {
        return scale == ABOVE_TABLE ? ">28" : Integer.toString(scale);
    }
}
