package org.coldpleat.model.steady;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.Comparison;
import org.junit.jupiter.api.Test;

class QuickCurvesTest {
    /** What is shown while a value changes must be what the comparison then says, to the last bit. */
    @Test
    void showsTheNumbersOfTheComparison() {
        ResolvedCase resolved = Cases.resolve(Cases.stand("9 L/min") + "candidates:\n" + Cases.mediumOnly("A", "12 psi")
                + Cases.mediumOnly("B", "20 psi"));
        Comparison comparison = Simulation.compare(resolved).now();
        QuickCurves quickCurves = Simulation.quickCurves(resolved, "stand").now();
        for (int i = 0; i < 2; i++) {
            StateResult state = comparison.candidates().get(i).states().get(0);
            QuickCurves.Candidate candidate = quickCurves.candidates().get(i);
            assertEquals(comparison.candidates().get(i).name(), candidate.name());
            assertArrayEquals(state.curve().valveDifference(), candidate.curve().valveDifference());
            assertArrayEquals(state.curve().bypassShare(), candidate.curve().bypassShare());
            assertEquals(1, candidate.intervals().size());
            assertArrayEquals(state.intervals().get(0), candidate.intervals().get(0));
        }
    }
}
