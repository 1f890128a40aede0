package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.coldpleat.model.certainty.draw.SobolDraws;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** How fast the error of a mean falls with the number of draws. */
class DrawConvergenceTest {
    private static final String SOURCE = "Owen 1997, Ann. Statist. 25, 1541, theorem 3";

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
        check("order of plain draws, two dimensions")
                .expected(-0.5, "1")
                .computed(slope(2, true))
                .within(0.15, "three sampling errors of a slope from 24 seeds");
        check("order of scrambled draws, two dimensions")
                .expected(-1.5, "1")
                .computed(slope(2, false))
                .within(0.15, "three sampling errors of a slope from 24 seeds");
    }

    /**
     * In six dimensions the power (log n)^(5/2) of the theory still flattens the curve at 8192 draws; the error must
     * fall at least as 1/n all the same, within the sampling error of the slope, and plain draws stay at n^-1/2.
     */
    @Test
    void sixDimensionsConvergeAsOneOverNAtLeast() {
        check("order of plain draws, six dimensions")
                .expected(-0.5, "1")
                .computed(slope(DIMENSION, true))
                .within(0.15, "three sampling errors of a slope from 24 seeds");
        check("order of scrambled draws, six dimensions")
                .computed(slope(DIMENSION, false), "1")
                .below(-0.85, "at least 1/n, within the sampling error of the slope; logarithms still flatten it");
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

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CONFIDENCE, quantity, SOURCE);
    }
}
