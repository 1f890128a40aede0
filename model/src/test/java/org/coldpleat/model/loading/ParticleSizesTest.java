package org.coldpleat.model.loading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ParticleSizesTest {
    private static final ParticleSizes TWO_DECADES =
            new ParticleSizes(new double[] {1e-6, 10e-6, 100e-6}, new double[] {0, 0.25, 1});

    @Test
    void sharesOfTheClassesSumToOne() {
        for (TestDust dust : TestDust.values()) {
            double[] shares = dust.sizes().shares(dust.sizes().classes(17));
            assertEquals(1, Arrays.stream(shares).sum(), 1e-12, dust.name());
        }
    }

    @Test
    void quantileIsTheInverseOfTheFinerShare() {
        for (TestDust dust : TestDust.values()) {
            for (double share = 0.01; share < 1; share += 0.07) {
                assertEquals(share, dust.sizes().finerThan(dust.sizes().quantile(share)), 1e-12, dust.name());
            }
        }
    }

    @Test
    void sharesLieStraightOverTheLogarithm() {
        double[] shares = TWO_DECADES.shares(SizeClasses.logSpaced(1e-6, 100e-6, 4));
        assertArrayEquals(new double[] {0.125, 0.125, 0.375, 0.375}, shares, 1e-12);
    }

    @Test
    void dustOutsideTheClassesIsRefusedNotDropped() {
        SizeClasses narrow = SizeClasses.logSpaced(2e-6, 100e-6, 4);
        String message = assertThrows(IllegalArgumentException.class, () -> TWO_DECADES.shares(narrow))
                .getMessage();
        assertTrue(message.contains("finer"), message);
    }

    @Test
    void gradesAreOrderedFromFineToCoarse() {
        double fine = TestDust.A2.sizes().quantile(0.5);
        double medium = TestDust.A3.sizes().quantile(0.5);
        double coarse = TestDust.A4.sizes().quantile(0.5);
        assertTrue(fine < medium && medium < coarse);
    }

    @Test
    void countOfSpheresMatchesNarrowClass() {
        // 1 kg/m3 of 10 um spheres of 2650 kg/m3: 6/(pi 2650 1e-15); class of 0.2 % width
        SizeClasses one = SizeClasses.single(10e-6);
        double count = Iso4406.count(one, new double[] {1}, 2650, 4e-6);
        // 1e-5: second order of the class half width 0.001, with the factor 9/6 of d^-3
        assertEquals(6 / (Math.PI * 2650 * 1e-15), count, 1e-5 * count);
        assertEquals(0, Iso4406.count(one, new double[] {1}, 2650, 11e-6), 0);
    }

    @Test
    void countDoesNotDependOnHowFineTheClassesAre() {
        SizeClasses coarse = SizeClasses.logSpaced(1e-6, 10e-6, 1);
        SizeClasses fine = SizeClasses.logSpaced(1e-6, 10e-6, 10);
        double[] even = new double[10];
        Arrays.fill(even, 0.1);
        for (double size : new double[] {1e-6, 3.3e-6, 9e-6}) {
            double expected = Iso4406.count(fine, even, 2650, size);
            assertEquals(expected, Iso4406.count(coarse, new double[] {1}, 2650, size), 1e-10 * expected);
        }
    }

    @Test
    void dirtSourceSplitsItsRateAndLosesNothing() {
        DirtSource source = new DirtSource(4e-9, TestDust.A2.sizes());
        SizeClasses classes = SizeClasses.logSpaced(0.3e-6, 300e-6, 13);
        assertEquals(4e-9, Arrays.stream(source.rates(classes)).sum(), 1e-21);
        assertEquals(0.002, Arrays.stream(source.lot(0.002, classes)).sum(), 1e-15);
    }
}
