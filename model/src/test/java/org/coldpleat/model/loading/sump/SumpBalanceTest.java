package org.coldpleat.model.loading.sump;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SumpBalanceTest {
    private static final double[] EFFICIENCY = {0, 0.2, 0.965, 1};
    private static final double[] SOURCE = {1e-8, 0, 3e-8, 2e-8};

    @Test
    void oneLongStepEqualsManyShortOnes() {
        SumpFlows flows = new SumpFlows(0.01, 3e-4, 0.1, 2e-6, 3e-6, 1e-7);
        SumpState once = SumpBalance.advance(SumpState.clean(4), flows, EFFICIENCY, SOURCE, 100);
        SumpState often = SumpState.clean(4);
        for (int i = 0; i < 1000; i++) {
            often = SumpBalance.advance(often, flows, EFFICIENCY, SOURCE, 0.1);
        }
        // a thousand roundings of 1e-16 on 1e-6 kg
        assertArrayEquals(once.suspended(), often.suspended(), 1e-18);
        assertArrayEquals(once.retained(), often.retained(), 1e-18);
    }

    @Test
    void nothingIsLostWithoutFlow() {
        SumpFlows still = SumpFlows.of(0.004, 0, 0);
        SumpState state = SumpBalance.advance(SumpState.clean(4), still, EFFICIENCY, SOURCE, 1000);
        assertEquals(6e-5, state.suspendedMass(), 1e-18);
        assertEquals(0, state.retainedMass(), 0);
    }

    @Test
    void openBypassCatchesNothing() {
        SumpFlows flows = SumpFlows.of(0.004, 1e-4, 1);
        SumpState state = SumpBalance.advance(SumpState.clean(4), flows, EFFICIENCY, SOURCE, 1000);
        assertEquals(0, state.retainedMass(), 0);
        assertEquals(Double.POSITIVE_INFINITY, SumpBalance.steadyConcentration(flows, 0.9, 1e-8));
    }

    @Test
    void changesOfOilKeepTheBooks() {
        SumpFlows flows = new SumpFlows(0.004, 1e-4, 0.05, 0, 0, 1e-8);
        SumpState state = SumpState.dirtyOil(new double[] {1e-5, 2e-5, 0, 1e-6});
        state = SumpBalance.advance(state, flows, EFFICIENCY, SOURCE, 5000);
        double before = state.suspendedMass();
        state = state.afterOilChange(0.9, new double[] {1e-6, 1e-6, 0, 0});
        assertEquals(0.1 * before + 2e-6, state.suspendedMass(), 1e-18);
        assertTrue(state.massClosure() < 1e-14, "closure " + state.massClosure());
    }

    @Test
    void samplesMustNotExceedTheFlow() {
        assertThrows(IllegalArgumentException.class, () -> new SumpFlows(0.01, 1e-4, 0, 6e-5, 5e-5, 0));
    }

    @Test
    void statesAreImmutable() {
        SumpState state = SumpState.clean(2);
        state.suspended()[0] = 1;
        assertEquals(0, state.suspendedMass(), 0);
    }
}
