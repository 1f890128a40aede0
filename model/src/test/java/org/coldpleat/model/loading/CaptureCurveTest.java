package org.coldpleat.model.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CaptureCurveTest {
    private static final RatingPair HALF = new RatingPair(23e-6, 0.5);
    private static final RatingPair NEARLY_ALL = RatingPair.ofBeta(45e-6, 75);

    @Test
    void everyFamilyMeetsBothRatings() {
        for (CaptureFamily family : CaptureFamily.values()) {
            CaptureCurve curve = family.through(HALF, NEARLY_ALL);
            assertEquals(0.5, curve.efficiency(23e-6), 1e-12, family.name());
            assertEquals(1 - 1.0 / 75, curve.efficiency(45e-6), 1e-12, family.name());
            assertEquals(23e-6, curve.medianSize(), 1e-17, family.name());
            assertEquals(family, curve.family());
        }
    }

    @Test
    void orderOfTheRatingsDoesNotMatter() {
        for (CaptureFamily family : CaptureFamily.values()) {
            assertEquals(family.through(HALF, NEARLY_ALL), family.through(NEARLY_ALL, HALF));
        }
    }

    @Test
    void captureStaysBetweenNoneAndAllAndRisesWithSize() {
        for (CaptureFamily family : CaptureFamily.values()) {
            for (double spread = 1.05; spread < 3; spread += 0.2) {
                CaptureCurve curve = family.through(new RatingPair(20e-6, 0.965), spread);
                double before = curve.efficiency(0);
                assertEquals(0, before, 0);
                for (double size = 0.1e-6; size < 1e-3; size *= 1.07) {
                    double now = curve.efficiency(size);
                    assertTrue(now >= before && now <= 1, family + " at " + size);
                    before = now;
                }
            }
        }
    }

    @Test
    void equalSpreadMeansEqualSlopeWhereHalfIsCaught() {
        double expected = slope(CaptureFamily.LOG_NORMAL);
        // second-order difference of step 1e-5
        assertEquals(expected, slope(CaptureFamily.WEIBULL), 1e-8);
        assertEquals(expected, slope(CaptureFamily.POWER_LAW_BETA), 1e-8);
    }

    private static double slope(CaptureFamily family) {
        CaptureCurve curve = family.through(HALF, 1.5);
        double step = 1e-5;
        double up = curve.efficiency(23e-6 * Math.exp(step));
        return (up - curve.efficiency(23e-6 * Math.exp(-step))) / (2 * step);
    }

    @Test
    void sizesOutsideTheRatingsAreMarkedAndWide() {
        CaptureEstimate estimate = CaptureEstimate.from(HALF, NEARLY_ALL);
        assertTrue(estimate.at(10e-6).extrapolated());
        assertTrue(estimate.at(60e-6).extrapolated());
        assertFalse(estimate.at(30e-6).extrapolated());
        assertTrue(estimate.at(10e-6).high() > 10 * estimate.at(10e-6).low());
        assertEquals(
                "loading.captureExtrapolated",
                estimate.notices("Blue can", 4e-6).get(0).code());
        assertTrue(estimate.notices("Blue can", 23e-6).isEmpty());
    }

    @Test
    void singleRatingLeavesABandThatHoldsTheLikelyCurve() {
        CaptureEstimate estimate = CaptureEstimate.from(new RatingPair(20e-6, 0.965));
        assertTrue(estimate.slopeAssumed());
        for (double size = 2e-6; size < 60e-6; size *= 1.1) {
            CaptureEstimate.Range range = estimate.at(size);
            assertTrue(range.low() <= range.likely() && range.likely() <= range.high());
        }
        assertEquals(0.965, estimate.at(20e-6).low(), 1e-12);
        assertEquals(0.965, estimate.at(20e-6).high(), 1e-12);
        assertEquals(2, estimate.notices("", 4e-6).size());
    }

    @Test
    void classMeanLiesBetweenTheEdges() {
        CaptureCurve curve = CaptureFamily.WEIBULL.through(HALF, NEARLY_ALL);
        SizeClasses classes = SizeClasses.logSpaced(1e-6, 200e-6, 20);
        double[] mean = curve.efficiencies(classes);
        for (int i = 0; i < mean.length; i++) {
            assertTrue(mean[i] >= curve.efficiency(classes.lower(i)));
            assertTrue(mean[i] <= curve.efficiency(classes.upper(i)));
        }
    }

    @Test
    void ratingsThatContradictEachOtherAreRefused() {
        RatingPair less = new RatingPair(45e-6, 0.4);
        assertThrows(IllegalArgumentException.class, () -> CaptureFamily.WEIBULL.through(HALF, less));
        assertThrows(IllegalArgumentException.class, () -> new RatingPair(10e-6, 1));
    }
}
