package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.coldpleat.model.confidence.SobolDraws;
import org.junit.jupiter.api.Test;

/** How fast the error of a mean falls with the number of draws. */
class DrawConvergenceTest {
    private static final int DIMENSION = 6;
    private static final int SEEDS = 24;

    /** Product of smooth factors with mean one in each coordinate: the integral is exactly 1. */
    private static double integrand(double[] u) {
        double product = 1;
        for (double x : u) {
            product *= 1 + 0.5 * (x * Math.exp(x) - 1);
        }
        return product;
    }

    private interface Points {
        double[] next(int index);
    }

    private static double rootMeanSquareError(int dimension, int draws, boolean random) {
        double squares = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            SplittableRandom plain = new SplittableRandom(seed);
            SobolDraws sobol = new SobolDraws(dimension, seed);
            Points points = random ? i -> plain.doubles(dimension).toArray() : sobol::point;
            double sum = 0;
            for (int i = 0; i < draws; i++) {
                sum += integrand(points.next(i));
            }
            squares += Math.pow(sum / draws - 1, 2);
        }
        return Math.sqrt(squares / SEEDS);
    }

    private static double slope(int dimension, boolean random) {
        double few = rootMeanSquareError(dimension, 128, random);
        double many = rootMeanSquareError(dimension, 8192, random);
        return Math.log(many / few) / Math.log(8192.0 / 128);
    }

    /**
     * Plain draws converge as n^-1/2. Nested scrambling of a Sobol net reaches n^-3/2 up to logarithms for smooth
     * integrands (Owen 1997, Ann. Statist. 25:1541, theorem 3). In two dimensions the logarithms cost little at these
     * numbers of draws. Limits: 0.15, three sampling errors of a slope from 24 seeds.
     */
    @Test
    void slopesAreThoseOfTheTheoryInTwoDimensions() {
        assertEquals(-0.5, slope(2, true), 0.15);
        assertEquals(-1.5, slope(2, false), 0.15);
    }

    /**
     * In six dimensions the power (log n)^(5/2) of the theory still flattens the curve at 8192 draws; the error must
     * fall at least as 1/n all the same, within the sampling error of the slope, and plain draws stay at n^-1/2.
     */
    @Test
    void sixDimensionsConvergeAsOneOverNAtLeast() {
        assertEquals(-0.5, slope(DIMENSION, true), 0.15);
        assertTrue(slope(DIMENSION, false) < -0.85, "slope " + slope(DIMENSION, false));
        double gain = rootMeanSquareError(DIMENSION, 4096, true) / rootMeanSquareError(DIMENSION, 4096, false);
        assertTrue(gain > 20, "4096 scrambled draws do the work of more than 400 times as many plain ones: " + gain);
    }

    @Test
    void scrambledMeanIsUnbiased() {
        double sum = 0;
        double squares = 0;
        int seeds = 400;
        for (int seed = 0; seed < seeds; seed++) {
            SobolDraws sobol = new SobolDraws(DIMENSION, seed);
            double mean = 0;
            for (int i = 0; i < 16; i++) {
                mean += integrand(sobol.point(i)) / 16;
            }
            sum += mean - 1;
            squares += (mean - 1) * (mean - 1);
        }
        double error = Math.sqrt(squares) / seeds;
        assertTrue(Math.abs(sum / seeds) < 4 * error, "bias " + sum / seeds + " against " + error);
    }
}
