package org.coldpleat.model.loading.multipass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.loading.Iso4406;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.loading.sump.SumpBalance;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.model.loading.sump.SumpState;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * A virtual multi-pass test: constant flow, constant injection of dust, until the element reaches its terminal pressure
 * drop.
 *
 * <p>The dirt balance is exact over each step. Only a leak through a gap changes within a step; its share is taken at
 * the middle of the step (second order). The end is bracketed by a step and narrowed down to a relative width of 1e-13
 * of the step.
 */
@Source(
        "procedure after ISO 4548-12 (multi-pass test of full-flow engine oil filters) and ISO 16889, their scopes only;"
                + " equations derived here")
@Validity("efficiency of each class constant during the test; reservoir volume constant; the oil of the test at one"
        + " viscosity")
public final class MultiPassTest {
    private MultiPassTest() {}

    /** Width to which the end of the test is closed in, over the step [1]. */
    private static final double CLOSE = 1e-13;

    /**
     * Runs the test.
     *
     * @param setup conditions
     * @param step time step of the series [s], above 0; the dirt balance does not depend on it without a gap leak
     * @param timeLimit longest time [s], at least one step
     */
    public static MultiPassResult run(MultiPassSetup setup, double step, double timeLimit) {
        Require.positive("step", step, "s");
        Require.atLeast("timeLimit", timeLimit, step, "s");
        SumpState state = SumpState.clean(setup.classes().count());
        List<MultiPassResult.Point> series = new ArrayList<>();
        series.add(point(setup, state, 0));
        double time = 0;
        while (time < timeLimit) {
            double stride = Math.min(step, timeLimit - time);
            SumpState next = advance(setup, state, stride);
            if (setup.pressureDrop(next.retainedMass()) >= setup.terminalPressureDrop()) {
                double last = timeToTerminal(setup, state, stride);
                state = advance(setup, state, last);
                time += last;
                series.add(point(setup, state, time));
                return result(MultiPassResult.Status.TERMINAL_REACHED, setup, series, state, time);
            }
            state = next;
            time += stride;
            series.add(point(setup, state, time));
        }
        return result(MultiPassResult.Status.TIME_LIMIT, setup, series, state, time);
    }

    private static MultiPassResult result(
            MultiPassResult.Status status,
            MultiPassSetup setup,
            List<MultiPassResult.Point> series,
            SumpState state,
            double time) {
        return new MultiPassResult(
                status,
                series,
                state,
                time,
                setup.injectionRate() * time,
                state.retainedMass(),
                setup.pressureDrop(state.retainedMass()),
                state.massClosure());
    }

    private static SumpState advance(MultiPassSetup setup, SumpState state, double duration) {
        double[] efficiency = setup.efficiency();
        double[] source = setup.source();
        SumpFlows flows = setup.flows().withBypassShare(share(setup, state));
        if (setup.leak().kind() == Leak.Kind.LAMINAR_GAP) {
            SumpState middle = SumpBalance.advance(state, flows, efficiency, source, duration / 2);
            flows = flows.withBypassShare(share(setup, middle));
        }
        return SumpBalance.advance(state, flows, efficiency, source, duration);
    }

    private static double timeToTerminal(MultiPassSetup setup, SumpState state, double stride) {
        return BracketedRoot.brent(
                        time -> setup.pressureDrop(advance(setup, state, time).retainedMass())
                                - setup.terminalPressureDrop(),
                        0,
                        stride,
                        CLOSE * stride)
                .orElse(stride);
    }

    private static MultiPassResult.Point point(MultiPassSetup setup, SumpState state, double time) {
        double[] upstream = state.concentration(setup.flows().volume());
        SumpFlows flows = setup.flows().withBypassShare(share(setup, state));
        double[] efficiency = setup.efficiency();
        double[] downstream = new double[upstream.length];
        for (int i = 0; i < downstream.length; i++) {
            downstream[i] = SumpBalance.downstream(flows, efficiency[i], upstream[i]);
        }
        double[] sizes = setup.betaSizes();
        double[] before = new double[sizes.length];
        double[] behind = new double[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            before[i] = count(setup, upstream, sizes[i]);
            behind[i] = count(setup, downstream, sizes[i]);
        }
        return new MultiPassResult.Point(
                time,
                setup.pressureDrop(state.retainedMass()),
                flows.bypassShare(),
                setup.injectionRate() * time,
                state.retainedMass(),
                Arrays.stream(upstream).sum(),
                Arrays.stream(downstream).sum(),
                before,
                behind);
    }

    private static double share(MultiPassSetup setup, SumpState state) {
        return setup.leak().bypassShare(setup.resistanceRatio(state.retainedMass()));
    }

    private static double count(MultiPassSetup setup, double[] concentration, double size) {
        return Iso4406.count(setup.classes(), concentration, setup.grainDensity(), size);
    }
}
