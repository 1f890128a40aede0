package org.coldpleat.model.certainty.draw;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points of a scrambled Sobol sequence in the unit cube: even cover of all unknowns at once, random enough to be
 * unbiased. The same dimension and seed give the same points, bit for bit, in whatever order and on however many
 * threads they are asked for. Immutable.
 *
 * <p>Scrambling is nested uniform (Owen's): each of the first 32 binary digits of a coordinate is flipped or not
 * depending on all digits before it; the remaining digits are random. It keeps the net properties of the sequence in
 * blocks of a power of two, so draw numbers should be powers of two.
 */
@Source("Joe, Kuo 2008, SIAM J. Sci. Comput. 30:2635 (direction numbers, as shipped with Hipparchus); Owen 1995,"
        + " Randomly permuted (t,m,s)-nets and (t,s)-sequences, Lect. Notes Stat. 106:299 (scrambling)")
@Validity("1 to 21201 dimensions, indices 0 to 2^30 - 1")
public final class SobolDraws {
    /** Number of dimensions for which direction numbers are at hand. */
    public static final int MAXIMUM_DIMENSION = 21_201;

    private static final int DIGITS = 52;
    private static final int INDEX_BITS = 30;
    private static final int NESTED_DIGITS = 32;
    private static final double ONE_ULP = Math.pow(2, -DIGITS);
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final int dimension;
    private final long seed;
    private final long[][] directions;

    /**
     * A sequence.
     *
     * @param dimension number of coordinates, 1 to {@link #MAXIMUM_DIMENSION}
     * @param seed any number; fixes the scrambling
     */
    public SobolDraws(int dimension, long seed) {
        if (dimension < 1 || dimension > MAXIMUM_DIMENSION) {
            throw new IllegalArgumentException(
                    "dimension must be 1 to " + MAXIMUM_DIMENSION + " unknowns, was " + dimension);
        }
        this.dimension = dimension;
        this.seed = seed;
        this.directions = directions(dimension);
    }

    /** Number of coordinates of a point. */
    public int dimension() {
        return dimension;
    }

    /**
     * One point.
     *
     * @param index position in the sequence, 0 to 2^30 - 1
     * @return coordinates, each strictly between 0 and 1
     */
    public double[] point(int index) {
        if (index < 0 || index >= (1 << INDEX_BITS)) {
            throw new IllegalArgumentException("index must be 0 to 2^" + INDEX_BITS + " - 1, was " + index);
        }
        double[] point = new double[dimension];
        int gray = index ^ (index >>> 1);
        for (int j = 0; j < dimension; j++) {
            long digits = 0;
            for (int rest = gray, k = 0; rest != 0; rest >>>= 1, k++) {
                if ((rest & 1) != 0) {
                    digits ^= directions[k][j];
                }
            }
            point[j] = (scramble(digits, mix(seed + GOLDEN * (j + 1L))) + 0.5) * ONE_ULP;
        }
        return point;
    }

    /** Successive points of the sequence differ by one direction number, which gives those numbers back. */
    private static long[][] directions(int dimension) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimension);
        long[][] directions = new long[INDEX_BITS][dimension];
        for (int k = 0; k < INDEX_BITS; k++) {
            double[] before = sequence.skipTo((1 << k) - 1);
            double[] after = sequence.nextVector();
            for (int j = 0; j < dimension; j++) {
                directions[k][j] = digits(before[j]) ^ digits(after[j]);
            }
        }
        return directions;
    }

    private static long digits(double coordinate) {
        return (long) (coordinate / ONE_ULP);
    }

    private static long scramble(long digits, long key) {
        long scrambled = digits;
        for (int k = 0; k < NESTED_DIGITS; k++) {
            int place = DIGITS - 1 - k;
            long before = digits >>> (place + 1);
            scrambled ^= (mix(key ^ mix(before + GOLDEN * (k + 1L))) & 1L) << place;
        }
        long rest = (1L << (DIGITS - NESTED_DIGITS)) - 1;
        return scrambled ^ (mix(key ^ mix(digits + GOLDEN * (NESTED_DIGITS + 1L))) & rest);
    }

    @Source("Steele, Lea, Flood 2014, Fast splittable pseudorandom number generators, OOPSLA: finalizer of SplitMix64")
    static long mix(long state) {
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
