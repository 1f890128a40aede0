package org.coldpleat.model.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NumericsTest {
    private static final double ROOT = Math.cbrt(2);

    @Test
    void cornerIsSmoothAndStartsAtZero() {
        assertEquals(0, Corner.ramp(0, 2));
        assertEquals(2, Corner.ramp(2, 2));
        assertEquals(1, Corner.slope(Math.nextDown(2.0), 2), 1e-12);
        assertEquals(5, Corner.capped(7, 5, 0.1));
        for (double y = 0; y < 2; y += 0.01) {
            assertTrue(y - Corner.ramp(y, 2) < 0.15 * 2 && Corner.slope(y, 2) <= 4.0 / 3);
        }
    }

    @Test
    void bracketedNewtonFindsTheRootOfAwkwardFunctions() {
        BracketedNewton newton = new BracketedNewton(0, Double.POSITIVE_INFINITY, 1e-3);
        for (int i = 0; i < 100 && Math.abs(value(newton.point())) > 1e-14; i++) {
            newton.step(value(newton.point()), -Math.pow(newton.point() / 3, 8) / 3);
        }
        assertEquals(Math.pow(9, 1.0 / 9) * 3, newton.point(), 1e-9);
    }

    private static double value(double x) {
        return 1 - Math.pow(x / 3, 9) / 9;
    }

    @Test
    void monotoneCubicKeepsBetweenItsNodes() {
        MonotoneCubic table = new MonotoneCubic(new double[] {0, 1, 2, 4}, new double[] {5, 3, 3, 1});
        double[] values = new double[41];
        Arrays.setAll(values, i -> table.value(i / 10.0));
        for (int i = 1; i < values.length; i++) {
            assertTrue(values[i] <= values[i - 1]);
        }
        assertEquals(7, table.value(-1), 1e-12);
    }

    @Test
    void monotoneCubicHasTheSlopeOfItsValues() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {0, 1, 3, 4}, new double[] {0, 1, 2, 6});
        for (double x = -0.95; x < 5; x += 0.1) {
            assertEquals((curve.value(x + 1e-6) - curve.value(x - 1e-6)) / 2e-6, curve.slope(x), 1e-6);
        }
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[] {1, 1}, new double[] {0, 1}));
    }

    @Test
    void illinoisStopsWhereTheStretchIsNarrow() {
        double found =
                BracketedRoot.illinois(NumericsTest::cube, 0, cube(0), 4, cube(4), BracketedRoot.Stop.atWidth(1e-6));
        assertEquals(ROOT, found, 0.5e-6);
    }

    @Test
    void illinoisStopsWhereTheValueIsSmallOrTheStepsAreUsedUp() {
        BracketedRoot.Stop stop = BracketedRoot.Stop.atValue(1e-9, 60);
        double found = BracketedRoot.illinois(NumericsTest::cube, 0, -2, 4, 62, stop);
        assertTrue(Math.abs(cube(found)) < 1e-9);
        int[] asked = {0};
        BracketedRoot.illinois(x -> cube(x + 0 * asked[0]++), 0, -2, 4, 62, new BracketedRoot.Stop(0, 0, 3));
        assertEquals(3, asked[0]);
    }

    @Test
    void placesWithoutAnAnswerEndASearch() {
        assertEquals(2, BracketedRoot.illinois(x -> Double.NaN, 0, -2, 4, 62, BracketedRoot.Stop.atWidth(1e-6)));
        assertEquals(OptionalDouble.empty(), BracketedRoot.brent(x -> x < 0.5 ? -1 : Double.NaN, 0, 1, 1e-9));
        assertEquals(OptionalDouble.empty(), BracketedRoot.brent(x -> 1 + x * x, 0, 1, 1e-9));
    }

    @Test
    void brentFindsTheRootToItsWidth() {
        assertEquals(ROOT, BracketedRoot.brent(NumericsTest::cube, 0, 4, 1e-12).orElseThrow(), 1e-12);
        assertEquals(0, BracketedRoot.brent(x -> x, 0, 4, 1e-12).orElseThrow());
    }

    @Test
    void goldenSectionClimbsToTheTop() {
        GoldenSection.Top top =
                GoldenSection.climb(x -> -cube(x) + 3 * x, 0, 0.5, 3, 3.375, 1e-6, Double.POSITIVE_INFINITY);
        assertEquals(1, top.at(), 1e-6);
        assertEquals(4, top.value(), 1e-12);
        assertTrue(Double.isNaN(
                GoldenSection.climb(x -> Double.NaN, 0, 1, 2, 0, 1e-6, 1).value()));
    }

    @Test
    void normalScoreIsTheInverseOfItsProbability() {
        for (double p : new double[] {1e-12, 0.01, 0.5, 0.975, 1 - 1e-12}) {
            assertEquals(p, StandardNormal.probability(StandardNormal.score(p)), 1e-15 + 1e-12 * Math.min(p, 1 - p));
        }
    }

    private static double cube(double x) {
        return x * x * x - 2;
    }
}
