package org.coldpleat.model.coldstart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.coldstart.OpenTemperatures.Kind;
import org.junit.jupiter.api.Test;

class OpeningFinderTest {
    private static final OpeningFinder FINDER = OpeningFinder.overOilRange();

    @Test
    void neverAndAlwaysAreAnswers() {
        assertEquals(Kind.NEVER, FINDER.find(t -> 0.3).kind());
        assertEquals(Kind.ALWAYS, FINDER.find(t -> 1.3).kind());
        assertEquals(Kind.UNKNOWN, FINDER.find(t -> Double.NaN).kind());
    }

    @Test
    void oneColdHalfLineEndsWhereTheCurveCrosses() {
        OpenTemperatures found = FINDER.find(t -> Math.exp((268.123 - t) / 15));
        assertEquals(Kind.BELOW, found.kind());
        assertEquals(268.123, found.warmestOpen(), 1e-3);
        assertTrue(found.isOpenAt(250) && !found.isOpenAt(270));
        assertTrue(found.evaluations() < 110, () -> "evaluations " + found.evaluations());
    }

    @Test
    void secondWarmIntervalIsFound() {
        OpenTemperatures found = FINDER.find(t -> Math.max(Math.exp((250 - t) / 10), 1.1 - Math.abs(t - 371.3) / 40));
        assertEquals(Kind.INTERVALS, found.kind());
        assertEquals(2, found.intervals().size());
        assertEquals(371.3 - 4, found.intervals().get(1).low(), 2e-3);
        assertEquals(371.3 + 4, found.intervals().get(1).high(), 2e-3);
    }

    @Test
    void thinIntervalOnTopOfAHumpIsFoundWhereverItLies() {
        for (double at = 240; at < 420; at += 0.731) {
            double center = at;
            // a parabola 0.4 K wide at the limit, on a hump some 20 K wide
            OpenTemperatures found = FINDER.find(t -> 1 + (0.04 - (t - center) * (t - center)) / 400);
            assertEquals(1, found.intervals().size(), () -> "at " + center);
            assertEquals(0.4, found.intervals().get(0).width(), 3e-3);
        }
    }

    @Test
    void thinPeakBetweenTwoStraightBranchesIsFound() {
        for (double at = 240; at < 420; at += 0.731) {
            double center = at;
            OpenTemperatures found = FINDER.find(t -> 1.004 - (t < center ? 0.02 * (center - t) : 0.02 * (t - center)));
            assertEquals(1, found.intervals().size(), () -> "at " + center);
            assertEquals(0.4, found.intervals().get(0).width(), 3e-3);
        }
    }

    @Test
    void thinGapIsFound() {
        for (double at = 240; at < 420; at += 0.731) {
            double center = at;
            OpenTemperatures found = FINDER.find(t -> 1 - (0.04 - (t - center) * (t - center)) / 400);
            assertEquals(2, found.intervals().size(), () -> "at " + center);
        }
    }

    @Test
    void justFailingToOpenIsNeverWithItsMargin() {
        OpenTemperatures found = FINDER.find(t -> 0.9999 - Math.pow(t - 263.7, 2) / 400);
        assertEquals(Kind.NEVER, found.kind());
        assertEquals(0.9999, found.greatestRatio(), 1e-5);
        assertEquals(263.7, found.greatestAt(), 0.1);
        assertEquals("coldstart.barelyShut", found.notices().get(0).code());
    }

    @Test
    void pointsWithoutAnswerAreCounted() {
        OpenTemperatures found = FINDER.find(t -> t < 240 ? Double.NaN : Math.exp((260 - t) / 10));
        assertTrue(found.unresolved() > 0);
        assertFalse(found.notices().isEmpty());
        assertEquals(260, found.warmestOpen(), 1e-3);
    }
}
