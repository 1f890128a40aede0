package org.coldpleat.model.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RobustFitTest {
    private static double line(double[] x, double[] p) {
        return p[0] + p[1] * x[0];
    }

    private static double[][] places(int count) {
        double[][] x = new double[count][1];
        for (int i = 0; i < count; i++) {
            x[i][0] = i;
        }
        return x;
    }

    private static double[] noisy(int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            y[i] = 2 + 0.5 * i + random.nextGaussian();
        }
        return y;
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    @Test
    void withoutOutliersBothLossesNearlyAgree() {
        double[] y = noisy(40, 1);
        RobustFit.Result squares = RobustFit.fit(
                RobustFitTest::line, places(40), y, ones(40), new double[] {1, 1}, RobustFit.Loss.LEAST_SQUARES);
        RobustFit.Result huber =
                RobustFit.fit(RobustFitTest::line, places(40), y, ones(40), new double[] {1, 1}, RobustFit.Loss.HUBER);
        for (int i = 0; i < 2; i++) {
            assertEquals(squares.parameters()[i], huber.parameters()[i], 0.5 * squares.scatterUncertainty(i));
        }
        assertEquals(2, Arrays.stream(squares.leverages()).sum(), 1e-9, "trace of the hat matrix is the rank");
    }

    /** Three wild readings in forty pull a least-squares line by many standard errors, a Huber line by less than two. */
    @Test
    void wildReadingsAreNamedAndHardlyPull() {
        double[] y = noisy(40, 2);
        y[3] += 40;
        y[20] += 60;
        y[37] -= 50;
        RobustFit.Result huber =
                RobustFit.fit(RobustFitTest::line, places(40), y, ones(40), new double[] {1, 1}, RobustFit.Loss.HUBER);
        assertEquals(java.util.List.of(3, 20, 37), huber.outliers());
        assertEquals(0.5, huber.parameters()[1], 2 * huber.standardUncertainty(1));
        assertTrue(huber.standardUncertainty(1) < 0.05);
        for (int bad : huber.outliers()) {
            assertTrue(huber.weights()[bad] < 0.1);
        }
    }

    /** The spread of robust estimates over many samples must be what each sample claims. */
    @Test
    void claimedUncertaintyIsTheSpreadOverSamples() {
        double squares = 0;
        double claimed = 0;
        int samples = 300;
        for (int s = 0; s < samples; s++) {
            RobustFit.Result fit = RobustFit.fit(
                    RobustFitTest::line,
                    places(20),
                    noisy(20, 100 + s),
                    ones(20),
                    new double[] {1, 1},
                    RobustFit.Loss.HUBER);
            squares += Math.pow(fit.parameters()[1] - 0.5, 2) / samples;
            claimed += Math.pow(fit.scatterUncertainty(1), 2) / samples;
        }
        // 300 samples give a variance within 8 %, root 4 %; three of them
        assertEquals(1, Math.sqrt(squares / claimed), 0.12);
    }

    @Test
    void curveThatCannotBeEvaluatedIsReportedNotThrown() {
        RobustFit.Result fit = RobustFit.fit(
                (x, p) -> Double.NaN, places(5), noisy(5, 1), ones(5), new double[] {1}, RobustFit.Loss.HUBER);
        assertFalse(fit.converged());
    }

    @Test
    void fewerReadingsThanParametersAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> RobustFit.fit(
                        RobustFitTest::line,
                        places(1),
                        new double[1],
                        ones(1),
                        new double[] {1, 1},
                        RobustFit.Loss.HUBER));
    }
}
