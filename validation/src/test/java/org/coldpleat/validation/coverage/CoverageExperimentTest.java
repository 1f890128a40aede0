package org.coldpleat.validation.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Truth known by construction; the normal run looks at fewer teardowns than the full one, at the same claims. */
class CoverageExperimentTest {
    private static final double STATED = 0.95;

    /** Three standard deviations of a share of 0.95 among as many independent bands: one false alarm in 370. */
    private static double allowed(Tally tally) {
        return 3 * Math.sqrt(STATED * (1 - STATED) / tally.count());
    }

    @Test
    void bandsHoldTheTruthAsOftenAsTheySay() {
        Coverage found = CoverageExperiment.run(0, 60, 256, 0);
        assertTrue(found.opened().count() > 100, "bands of valves that open: " + found.opened());
        assertEquals(STATED, found.opened().share(), allowed(found.opened()), found.opened()::toString);
        assertEquals(STATED, found.resistance().share(), allowed(found.resistance()), found.resistance()::toString);
    }

    /** The claim of docs/coverage.md; a minute of computing. */
    @Test
    @Tag("nightly")
    void fullRunKeepsWithinTheClaimOfTheDocument() {
        Coverage found = CoverageExperiment.run(0, 500, 512, 5);
        // the claim: 92 to 98 % of the bands of a stated 95 %
        assertEquals(STATED, found.opened().share(), 0.03, found.opened()::toString);
        double chiSquare = 0;
        for (Coverage.Tenth tenth : found.pairs()) {
            if (tenth.count() > 0) {
                chiSquare += Math.pow((tenth.found() - tenth.stated()) / tenth.error(), 2);
            }
        }
        // 99.9 % quantile of chi-square with ten degrees of freedom (any table of the distribution)
        assertTrue(chiSquare < 29.59, "chi-square of the stated chances: " + chiSquare);
    }

    @Test
    void theSameNumberGivesTheSameTeardown() {
        assertEquals(SyntheticTeardown.of(3).readings(), SyntheticTeardown.of(3).readings());
        assertEquals(SyntheticTeardown.of(3).moved(), SyntheticTeardown.of(3).moved());
    }
}
