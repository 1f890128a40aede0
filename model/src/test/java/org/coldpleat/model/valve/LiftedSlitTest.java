package org.coldpleat.model.valve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.junit.jupiter.api.Test;

class LiftedSlitTest {
    private static final double EDGE = 0.04;
    private static final double DISCHARGE = 0.6;
    private static final double LIFT = 0.5e-3;
    private static final Fluid CREEPING = new Fluid(1e4, 870);
    private static final Fluid INVISCID = new Fluid(1e-9, 870);

    private static LiftedSlit slit(AdditiveLaw port) {
        return new LiftedSlit(EDGE, DISCHARGE, port);
    }

    @Test
    void coldOilCreepsThroughWithTheCubeOfTheLift() {
        // Hasimoto 1958: dp = 32 mu Q/(pi x^2 P); inertia takes 6e-9 of the difference
        double perFlow = 1e4 * 32 / (Math.PI * LIFT * LIFT * EDGE);
        assertEquals(2e5 / perFlow, slit(AdditiveLaw.NONE).flowRate(LIFT, 2e5, CREEPING), 1e-8 * 2e5 / perFlow);
    }

    @Test
    void thinOilLeavesAsAJetOfTheContractedArea() {
        // Cd A sqrt(2 dp/rho)
        double jet = DISCHARGE * EDGE * LIFT * Math.sqrt(2 * 2e5 / 870);
        assertEquals(jet, slit(AdditiveLaw.NONE).flowRate(LIFT, 2e5, INVISCID), 1e-6 * jet);
    }

    @Test
    void portTakesItsPartOfTheDifference() {
        AdditiveLaw port = new AdditiveLaw(3e9, 2e9);
        Fluid oil = new Fluid(0.1, 870);
        double flow = slit(port).flowRate(LIFT, 2e5, oil);
        double left = 2e5 - port.pressureDrop(flow, oil);
        assertEquals(flow, slit(AdditiveLaw.NONE).flowRate(LIFT, left, oil), 1e-12 * flow);
    }

    @Test
    void flowTurnsWithTheDifference() {
        Fluid oil = new Fluid(0.1, 870);
        LiftedSlit slit = slit(new AdditiveLaw(3e9, 2e9));
        assertEquals(-slit.flowRate(LIFT, 2e5, oil), slit.flowRate(LIFT, -2e5, oil));
        FlowWithSlope forward = slit.passage(LIFT, 2e5, oil);
        FlowWithSlope backward = slit.passage(LIFT, -2e5, oil);
        assertEquals(-forward.flowRate(), backward.flowRate());
        assertEquals(forward.slope(), backward.slope(), 1e-15 * forward.slope());
        assertEquals(-slit.byLift(LIFT, forward, oil), slit.byLift(LIFT, backward, oil));
    }

    @Test
    void slopeCountsThatTheLiftGrowsWithTheDifference() {
        LiftedSlit slit = slit(new AdditiveLaw(3e9, 2e9));
        double growth = 2e-9;
        for (Fluid oil : new Fluid[] {CREEPING, INVISCID, new Fluid(0.1, 870)}) {
            double dp = 2e5;
            double h = 10;
            double ahead = slit.flowRate(LIFT + growth * h, dp + h, oil);
            double behind = slit.flowRate(LIFT - growth * h, dp - h, oil);
            FlowWithSlope fixed = slit.passage(LIFT, dp, oil);
            double slope = fixed.slope() + growth * slit.byLift(LIFT, fixed, oil);
            // second-order difference, steps of 5e-5 of the difference and 4e-5 of the lift
            assertEquals((ahead - behind) / (2 * h), slope, 1e-7 * slope);
        }
    }

    @Test
    void liftBelowTheSizeOfAnAtomIsShut() {
        Fluid oil = new Fluid(0.1, 870);
        LiftedSlit slit = slit(AdditiveLaw.NONE);
        assertEquals(0, slit.flowRate(0.9e-10, 2e5, oil));
        assertEquals(new FlowWithSlope(0, 0), slit.passage(0.9e-10, 2e5, oil));
        assertEquals(0, slit.byLift(0.9e-10, new FlowWithSlope(1, 1), oil));
        assertEquals(
                slit.flowRate(1.1e-10, 2e5, oil),
                slit.passage(1.1e-10, 2e5, oil).flowRate());
    }

    @Test
    void dropTimesSquaredLiftIsTheSameAtEveryLift() {
        Fluid oil = new Fluid(0.1, 870);
        LiftedSlit slit = slit(AdditiveLaw.NONE);
        double product = slit.dropTimesSquaredLift(1e-4, oil);
        for (double lift : new double[] {0.1e-3, 1e-3, 3e-3}) {
            assertEquals(1e-4, slit.flowRate(lift, product / (lift * lift), oil), 1e-16);
        }
    }
}
