package org.coldpleat.model.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class DrainTestTest {
    private static Fluid oil(double t) {
        return new Fluid(0.05 * Math.exp(-0.05 * (t - 310)), 850);
    }

    private static final double PSI = 4e8;

    private static DrainTest.Rig rig(AdditiveLaw hose) {
        Measured area = Measured.exact(Kind.AREA, 0.02, Provenance.MEASURED);
        return new DrainTest.Rig(area, hose, 5e-4, 5e-4, 0.5, 0.03, 0.1);
    }

    private static List<DrainReading> log(double first, double psi, DrainTest.Rig rig, double noise, long seed) {
        List<DrainReading> times = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            times.add(new DrainReading(20.0 * i, 1, 315 - 0.8 * i));
        }
        double[] heads = DrainTest.heads(psi, first, times, rig, DrainTestTest::oil);
        SplittableRandom random = new SplittableRandom(seed);
        List<DrainReading> log = new ArrayList<>();
        for (int i = 0; i < heads.length; i++) {
            DrainReading t = times.get(i);
            log.add(new DrainReading(t.time(), heads[i] + noise * random.nextGaussian(), t.temperature()));
        }
        return log;
    }

    @Test
    void coolingFallingHeadGivesBackTheResistance() {
        DrainTest.Rig rig = rig(new AdditiveLaw(3e7, 1e8));
        BenchEstimate estimate = DrainTest.fallingHead(log(0.5, PSI, rig, 0, 1), rig, DrainTestTest::oil);
        assertEquals(PSI, estimate.value().orElseThrow().value(), 1e-6 * PSI);
        assertEquals(-3e7 / PSI, estimate.correction("hose").orElseThrow().relativeSize(), 1e-6);
    }

    @Test
    void noisyReadingsStayWithinTheStatedUncertainty() {
        DrainTest.Rig rig = rig(AdditiveLaw.NONE);
        int inside = 0;
        for (int seed = 0; seed < 40; seed++) {
            Measured psi = DrainTest.fallingHead(log(0.5, PSI, rig, 5e-4, seed), rig, DrainTestTest::oil)
                    .value()
                    .orElseThrow();
            inside += Math.abs(Math.log(psi.value() / PSI)) < 2 * psi.halfWidth() ? 1 : 0;
        }
        assertTrue(inside >= 38, "inside " + inside);
    }

    @Test
    void constantHeadFollowsDarcy() {
        Fluid fluid = oil(310);
        double flow = DrainTest.headPressure(0.4, fluid.density()) / (fluid.dynamicViscosity() * PSI);
        BenchEstimate estimate = DrainTest.constantHead(
                Measured.exact(Kind.LENGTH, 0.4, Provenance.MEASURED),
                Measured.exact(Kind.VOLUME, flow * 60, Provenance.MEASURED),
                Measured.exact(Kind.DURATION, 60, Provenance.MEASURED),
                310,
                rig(AdditiveLaw.NONE),
                DrainTestTest::oil);
        assertEquals(PSI, estimate.value().orElseThrow().value(), 1e-9 * PSI);
    }

    @Test
    void hoseThatTakesAllIsRefused() {
        DrainTest.Rig rig = rig(AdditiveLaw.NONE);
        List<DrainReading> log = log(0.5, PSI, rig, 0, 1);
        assertEquals(
                BenchEstimate.Status.REFUSED,
                DrainTest.fallingHead(log, rig(AdditiveLaw.laminarOnly(5e8)), DrainTestTest::oil)
                        .status());
    }

    @Test
    void planAgreesWithTheTestItself() {
        DrainTest.Rig rig = rig(AdditiveLaw.NONE);
        Plan plan = DrainTest.plan(PSI, 0.5, 0.25, 310, rig, DrainTestTest::oil, 1e-3, 0.3);
        double[] heads = DrainTest.heads(
                PSI,
                0.5,
                List.of(new DrainReading(0, 1, 310), new DrainReading(plan.duration(), 1, 310)),
                rig,
                DrainTestTest::oil);
        assertEquals(0.25, heads[1], 1e-6);
        assertTrue(plan.lnSigma() < 0.1);
        assertTrue(plan.resolutionNeeded().isPresent());
    }

    @Test
    void leakScalesWithHeadAndViscosity() {
        assertEquals(
                0.36e-6 / 3600, AntiDrainLeak.scaled(10e-6 / 3600, 0.6096, 4.7e-6, 0.6096, 130e-6), 0.005e-6 / 3600);
        assertEquals(5, AntiDrainLeak.refillDelay(1e-9, 1e9, 5e-4, 1e-4), 1e-12);
        assertEquals(0.36, AntiDrainLeak.refillDelay(1e-8, 3600, 5e-4, 1e-4), 1e-12);
        assertEquals(
                "bench.leak.aboveSpecified",
                AntiDrainLeak.judge(1e-6 / 3600, 0.6096, 130e-6).get(0).code());
    }
}
