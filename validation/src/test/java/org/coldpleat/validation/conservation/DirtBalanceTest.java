package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.model.loading.multipass.MultiPassResult;
import org.coldpleat.model.loading.multipass.MultiPassSetup;
import org.coldpleat.model.loading.multipass.MultiPassTest;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.loading.sump.SumpBalance;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.model.loading.sump.SumpState;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** No dirt appears or vanishes, whatever the flows. */
class DirtBalanceTest {
    private static final String SOURCE = "conservation, derived here";

    @Test
    void everyStepOfTheSumpClosesForRandomFlows() {
        Random random = new Random(20261125);
        for (int trial = 0; trial < 2000; trial++) {
            SumpState state = SumpState.dirtyOil(new double[] {1e-6 * random.nextDouble(), 0, 1e-4});
            for (int step = 0; step < 5; step++) {
                double flow = Math.pow(10, -7 + 4 * random.nextDouble());
                SumpFlows flows = new SumpFlows(
                        0.001 + 0.02 * random.nextDouble(),
                        flow,
                        random.nextDouble(),
                        0.1 * flow * random.nextDouble(),
                        0.1 * flow * random.nextDouble(),
                        1e-8 * random.nextDouble());
                double[] efficiency = {random.nextDouble(), 0, 1};
                double[] source = {1e-8 * random.nextDouble(), 0, 1e-9};
                state = SumpBalance.advance(state, flows, efficiency, source, Math.pow(10, 5 * random.nextDouble()));
            }
            // a few tens of roundings of 1e-16
            ExternalCheck.of(Topic.LOADING, "dirt balance of a sump with random flows", "conservation, derived here")
                    .at("trial " + trial)
                    .computed(state.massClosure(), "1")
                    .below(1e-12, "a few tens of roundings");
        }
    }

    @Test
    void multiPassTestWithRealDustClosesAndNeverClearsItself() {
        SizeClasses classes = TestDust.A3.sizes().classes(24);
        CaptureCurve curve = CaptureFamily.LOG_NORMAL.through(new RatingPair(10e-6, 0.5), RatingPair.ofBeta(25e-6, 75));
        for (Leak.Kind kind : Leak.Kind.values()) {
            for (double exponent : new double[] {0, 1, 2}) {
                MultiPassSetup setup = new MultiPassSetup(
                        classes,
                        TestDust.A3.sizes().shares(classes),
                        TestDust.GRAIN_DENSITY,
                        curve.efficiencies(classes),
                        new SumpFlows(0.01, 5e-4, 0, 2e-6, 2e-6, 0),
                        5e-6,
                        new BlockingLaw(exponent, 15),
                        0.12,
                        8e3,
                        70e3,
                        new Leak(0.01, kind),
                        new double[] {4e-6, 10e-6, 20e-6, 30e-6});
                MultiPassResult result = MultiPassTest.run(setup, 20, 50_000);
                String name = kind + ", n " + exponent;
                assertEquals(MultiPassResult.Status.TERMINAL_REACHED, result.status(), name);
                check("dirt balance of a multi-pass test")
                        .at(name)
                        .computed(result.massClosure(), "1")
                        .below(1e-9, "rounding of some thousand sums");
                double found = result.retainedMass()
                        + result.end().suspendedMass()
                        + sum(result.end().sampled());
                check("dirt caught, suspended and sampled of a multi-pass test")
                        .at(name)
                        .expected(result.injectedMass(), "kg")
                        .computed(found)
                        .withinRelative(1e-9, "rounding");
                checkSeries(result, name);
            }
        }
    }

    private static void checkSeries(MultiPassResult result, String name) {
        for (int i = 1; i < result.series().size(); i++) {
            MultiPassResult.Point before = result.series().get(i - 1);
            MultiPassResult.Point now = result.series().get(i);
            assertTrue(now.pressureDrop() >= before.pressureDrop(), name);
            assertTrue(now.retainedMass() >= before.retainedMass(), name);
            assertTrue(now.downstream() <= now.upstream(), name);
            for (int size = 0; size < 4; size++) {
                assertTrue(now.beta(size) >= 1, name);
                assertTrue(size == 0 || now.beta(size) > now.beta(size - 1), name + ": larger is caught better");
            }
        }
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
