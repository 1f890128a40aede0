package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.FiltrationRatio;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.loading.multipass.MultiPassResult;
import org.coldpleat.model.loading.multipass.MultiPassSetup;
import org.coldpleat.model.loading.multipass.MultiPassTest;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** The virtual multi-pass test against the closed solution of the reservoir; all expected values derived here. */
class MultiPassTestExampleTest {
    private static final String SOURCE = "derived here";

    private static final double VOLUME = 0.010;
    private static final double FLOW = 20e-3 / 60;
    private static final double INJECTION = 0.2e-3 / 60;
    private static final double AREA = 0.1;
    private static final double CLEAN = 5e3;
    private static final double TERMINAL = 100e3;
    private static final double BLOCKING = 20;

    @Test
    void concentrationFollowsTheClosedSolutionAtEveryMoment() {
        MultiPassResult result = MultiPassTest.run(setup(0.965, 1, Leak.NONE), 7, 1e5);
        double rest = INJECTION / (0.965 * FLOW);
        double tau = VOLUME / (0.965 * FLOW);
        for (MultiPassResult.Point point : result.series()) {
            double expected = -rest * Math.expm1(-point.time() / tau);
            check("upstream concentration of a multi-pass test")
                    .at(point.time() + " s")
                    .expected(expected, "kg/m3")
                    .computed(point.upstream())
                    .within(1e-12 * rest, "arithmetic");
            check("downstream concentration of a multi-pass test")
                    .at(point.time() + " s")
                    .expected(0.035 * expected, "kg/m3")
                    .computed(point.downstream())
                    .within(1e-12 * rest, "arithmetic");
        }
        // 10 mg for each liter of flow: 10.3627 mg/L at rest, reached to exp(-22) after 700 s; half of the last digit
        check("upstream concentration at rest")
                .expected(10.3627e-3, "kg/m3")
                .computed(result.series().get(100).upstream())
                .within(5.1e-8, "half the last digit");
    }

    @Test
    void testEndsWithTheDirtThatTheBlockingLawAllows() {
        for (double n : new double[] {0, 1, 1.5, 2}) {
            MultiPassSetup setup = setup(0.965, n, Leak.NONE);
            MultiPassResult result = MultiPassTest.run(setup, 60, 1e6);
            double allowed = dirtAtTheEnd(n);
            assertEquals(MultiPassResult.Status.TERMINAL_REACHED, result.status());
            check("dirt at the end of a multi-pass test")
                    .at("n " + n)
                    .expected(allowed, "kg")
                    .computed(result.retainedMass())
                    .within(1e-12, "arithmetic");
            check("pressure drop at the end of a multi-pass test")
                    .at("n " + n)
                    .expected(TERMINAL, "Pa")
                    .computed(result.pressureDrop())
                    .withinRelative(1e-6, "end located to this");
            // G (t - tau (1 - exp(-t/tau))) = M, the exponential long gone: t = M/G + tau
            double tau = VOLUME / (0.965 * FLOW);
            check("duration of a multi-pass test")
                    .at("n " + n)
                    .expected(allowed / INJECTION + tau, "s")
                    .computed(result.duration())
                    .within(1e-8 * result.duration(), "end located to this");
        }
    }

    /** Dirt [kg] at which dR/dm = K R0 (R/R0)^n has raised the drop to the terminal one, r = R/R0: integrated by hand. */
    private static double dirtAtTheEnd(double n) {
        double r = TERMINAL / CLEAN;
        double scaled = n == 1 ? Math.log(r) : (1 - Math.pow(r, 1 - n)) / (n - 1);
        return AREA * scaled / BLOCKING;
    }

    @Test
    void blockingLawComesBackFromTheResult() {
        MultiPassResult result = MultiPassTest.run(setup(0.8, 1.5, Leak.NONE), 60, 1e6);
        BlockingLaw back = BlockingLaw.fromMultiPass(1.5, result.retainedMass(), AREA, CLEAN, TERMINAL);
        check("blocking coefficient back from the result")
                .expected(BLOCKING, "m2/kg")
                .computed(back.coefficient())
                .within(1e-8, "end located to this");
    }

    @Test
    void ratioOfCountsIsThatOfTheMediumWithItsLeak() {
        for (double beta : new double[] {10, 75, 200, 1000}) {
            for (double leak : new double[] {0, 0.005, 0.02, 0.10}) {
                double efficiency = FiltrationRatio.efficiency(beta);
                Leak constant = new Leak(leak, Leak.Kind.CONSTANT_SHARE);
                MultiPassResult result = MultiPassTest.run(setup(efficiency, 1, constant), 30, 1e6);
                double expected = FiltrationRatio.withLeak(beta, leak);
                for (int i = 1; i < result.series().size(); i++) {
                    check("filtration ratio of counts with a leak")
                            .at("beta " + beta + ", leak " + leak)
                            .expected(expected, "1")
                            .computed(result.series().get(i).beta(0))
                            .withinRelative(1e-10, "arithmetic");
                }
                check("mean filtration ratio with a leak")
                        .at("beta " + beta + ", leak " + leak)
                        .expected(expected, "1")
                        .computed(result.meanBeta(0))
                        .withinRelative(1e-10, "arithmetic");
            }
        }
    }

    @Test
    void resultDoesNotDependOnTheStep() {
        MultiPassResult coarse = MultiPassTest.run(setup(0.9, 1, Leak.NONE), 500, 1e6);
        MultiPassResult fine = MultiPassTest.run(setup(0.9, 1, Leak.NONE), 3, 1e6);
        assertEquals(coarse.duration(), fine.duration(), 1e-9 * fine.duration());
        assertEquals(coarse.retainedMass(), fine.retainedMass(), 1e-12);
    }

    @Test
    void gapLeakConvergesWithTheSquareOfTheStep() {
        Leak gap = new Leak(0.01, Leak.Kind.LAMINAR_GAP);
        double exact = dirtWithGapLeak(0.9, 0.01, 1000);
        double coarse = MultiPassTest.run(setup(0.9, 1, gap), 20, 1000).retainedMass() - exact;
        double fine = MultiPassTest.run(setup(0.9, 1, gap), 10, 1000).retainedMass() - exact;
        check("dirt held after 1000 s with a gap leak")
                .expected(exact, "kg")
                .computed(MultiPassTest.run(setup(0.9, 1, gap), 0.25, 1000).retainedMass())
                .within(Math.abs(fine) / 1000, "steps 40 times finer: the error falls by 1600");
        double order = Math.log(coarse / fine) / Math.log(2);
        // steps are a half and a quarter of the time constant of 37 s: the next term of the error still shows
        check("order of a multi-pass test with a gap leak")
                .at("")
                .expected(2, "1")
                .computed(order)
                .within(0.2, "steps of a half and a quarter of the time constant: the next term still shows");
    }

    /**
     * Dirt held [kg] by the balances of the test, integrated here by the classical Runge-Kutta rule: flow Q (1 - l) meets
     * the medium, the odds l/(1 - l) of the gap rise with exp(K m/A).
     */
    private static double dirtWithGapLeak(double efficiency, double cleanShare, double time) {
        int steps = 10_000;
        double h = time / steps;
        double concentration = 0;
        double held = 0;
        for (int i = 0; i < steps; i++) {
            double k1 = caught(efficiency, cleanShare, concentration, held);
            double k2 = caught(efficiency, cleanShare, concentration + h / 2 * rise(k1), held + h / 2 * k1);
            double k3 = caught(efficiency, cleanShare, concentration + h / 2 * rise(k2), held + h / 2 * k2);
            double k4 = caught(efficiency, cleanShare, concentration + h * rise(k3), held + h * k3);
            double mean = (k1 + 2 * k2 + 2 * k3 + k4) / 6;
            concentration += h * rise(mean);
            held += h * mean;
        }
        return held;
    }

    private static double caught(double efficiency, double cleanShare, double concentration, double held) {
        double odds = cleanShare / (1 - cleanShare) * Math.exp(BLOCKING * held / AREA);
        return efficiency * FLOW / (1 + odds) * concentration;
    }

    private static double rise(double caught) {
        return (INJECTION - caught) / VOLUME;
    }

    @Test
    void gapLeakPullsBetaDownAsTheElementLoadsAndCapsThePressureDrop() {
        Leak gap = new Leak(0.10, Leak.Kind.LAMINAR_GAP);
        MultiPassResult result = MultiPassTest.run(setup(0.99, 1, gap), 60, 40_000);
        // all flow through the gap alone: clean drop over the clean share, 50 kPa; the terminal 100 kPa is out of reach
        assertEquals(MultiPassResult.Status.TIME_LIMIT, result.status());
        for (int i = 2; i < result.series().size(); i++) {
            MultiPassResult.Point before = result.series().get(i - 1);
            MultiPassResult.Point now = result.series().get(i);
            assertTrue(now.beta(0) < before.beta(0));
            assertTrue(now.pressureDrop() > before.pressureDrop() && now.pressureDrop() < 10 * CLEAN);
        }
        assertEquals(
                1,
                result.notices("").stream()
                        .filter(notice -> "loading.terminalNotReached".equals(notice.code()))
                        .count());
    }

    @Test
    void dirtierInjectionOnlyShortensTheTest() {
        MultiPassSetup setup = setup(0.965, 1, Leak.NONE);
        double whole = dirtAtTheEnd(1);
        MultiPassSetup twice = new MultiPassSetup(
                setup.classes(),
                setup.shares(),
                setup.grainDensity(),
                setup.efficiency(),
                setup.flows(),
                2 * INJECTION,
                setup.medium(),
                AREA,
                CLEAN,
                TERMINAL,
                Leak.NONE,
                setup.betaSizes());
        MultiPassResult result = MultiPassTest.run(twice, 10, 1e6);
        check("dirt at the end with twice the injection")
                .expected(whole, "kg")
                .computed(result.retainedMass())
                .within(1e-12, "arithmetic");
        double tau = VOLUME / (0.965 * FLOW);
        check("duration with twice the injection")
                .expected(whole / (2 * INJECTION) + tau, "s")
                .computed(result.duration())
                .within(1e-6 * result.duration(), "end located to this");
    }

    private static MultiPassSetup setup(double efficiency, double exponent, Leak leak) {
        return new MultiPassSetup(
                SizeClasses.single(20e-6),
                new double[] {1},
                2650,
                new double[] {efficiency},
                SumpFlows.of(VOLUME, FLOW, 0),
                INJECTION,
                new BlockingLaw(exponent, BLOCKING),
                AREA,
                CLEAN,
                TERMINAL,
                leak,
                new double[] {19.99e-6});
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
