package org.coldpleat.model.valve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.PilotedLaw;
import org.junit.jupiter.api.Test;

class SpringValveTest {
    private static final Fluid COLD = new Fluid(1.5, 880);
    private static final Fluid HOT = new Fluid(0.01, 830);
    private static final SpringValve WITH_FORCE =
            new SpringValve(80e3, 11e-3, 900, 4e-3, 0.7, 0.6, Openings.hole(9e-3, 2e-3, 0.7), 1e-16, 0.3, 70e3);

    @Test
    void slopeIsTheDerivativeOfTheFlow() {
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            for (double dp = -50e3; dp < 900e3; dp += 1234.5) {
                double h = 0.5;
                double numeric = (WITH_FORCE.flowRate(dp + h, oil) - WITH_FORCE.flowRate(dp - h, oil)) / (2 * h);
                // second-order difference across a corner of 80 Pa half-width misses by h/80 at most
                assertEquals(numeric, WITH_FORCE.flowSlope(dp, oil), 1e-2 * numeric + 1e-22);
            }
        }
    }

    /** One pressure lifts the lid, another drives the oil: each slope by itself. */
    @Test
    void slopesOfAPilotedValveAreItsDerivatives() {
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            for (double opening = 85e3; opening < 900e3; opening += 12345.6) {
                double driving = 1.7 * opening;
                double h = 5;
                PilotedLaw.Piloted at = WITH_FORCE.at(opening, driving, oil);
                double byOpening = (WITH_FORCE.at(opening + h, driving, oil).flowRate()
                                - WITH_FORCE.at(opening - h, driving, oil).flowRate())
                        / (2 * h);
                double byDriving = (WITH_FORCE.at(opening, driving + h, oil).flowRate()
                                - WITH_FORCE.at(opening, driving - h, oil).flowRate())
                        / (2 * h);
                // second-order differences; the rounded corner at full lift is 4 um of lift, 35 Pa wide
                assertEquals(byOpening, at.byOpening(), 1e-2 * Math.abs(byOpening) + 1e-15);
                assertEquals(byDriving, at.byDriving(), 1e-2 * Math.abs(byDriving) + 1e-15);
            }
        }
    }

    @Test
    void flowNeverFalls() {
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            double last = Double.NEGATIVE_INFINITY;
            for (double dp = -200e3; dp < 900e3; dp += 37) {
                double flow = WITH_FORCE.flowRate(dp, oil);
                assertTrue(flow >= last);
                last = flow;
            }
        }
    }

    @Test
    void shutValveOnlyLeaks() {
        assertEquals(1e-16 * 50e3 / 1.5, WITH_FORCE.flowRate(50e3, COLD), 1e-25);
        assertFalse(WITH_FORCE.isOpen(80e3));
        assertTrue(WITH_FORCE.isOpen(80.001e3));
    }

    @Test
    void frictionHoldsAnOpenedValveDownToTheClosingPressure() {
        assertEquals(70e3, WITH_FORCE.afterOpening().shutsAt());
        assertTrue(WITH_FORCE.afterOpening().isOpen(75e3));
        assertFalse(WITH_FORCE.isOpen(75e3));
        assertTrue(WITH_FORCE.afterOpening().flowRate(75e3, HOT) > WITH_FORCE.flowRate(75e3, HOT));
    }

    @Test
    void lidRestsBetweenTheWayUpAndTheWayDown() {
        double up = WITH_FORCE.lift(100e3);
        SpringValve hanging = WITH_FORCE.hangingAt(up);
        // higher: on along the way up; lower: at rest until the way down has come to this lift
        assertEquals(WITH_FORCE.lift(120e3), hanging.lift(120e3), 1e-15);
        assertEquals(up, hanging.lift(100e3), 1e-15);
        assertEquals(up, hanging.lift(95e3), 1e-15);
        assertEquals(WITH_FORCE.afterOpening().lift(75e3), hanging.lift(75e3), 1e-15);
        assertEquals(0, hanging.lift(69e3));
        assertTrue(hanging.lift(75e3) < up && hanging.lift(75e3) > 0);
        double h = 1;
        for (double pressure : new double[] {75e3, 95e3, 120e3}) {
            double numeric = (hanging.flowRate(pressure + h, HOT) - hanging.flowRate(pressure - h, HOT)) / (2 * h);
            assertEquals(numeric, hanging.flowSlope(pressure, HOT), 1e-6 * numeric);
        }
    }

    @Test
    void wrongUseNamesValueLimitAndUnit() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> SpringValve.disc(-1, 11e-3, 900, 4e-3, 0));
        assertTrue(e.getMessage().contains("openingPressure") && e.getMessage().contains("Pa"));
    }

    private static final double PRESSURE_OF_FULL_LIFT = 161.291e3;

    /** Plate of 12 mm seat, 100 kPa, 1.5 N/mm, with a share z of the full flow force. */
    private static SpringValve plate(double maximumLift, double curtain, AdditiveLaw port, double leak, double force) {
        return new SpringValve(100e3, 12e-3, 1500, maximumLift, curtain, 0.62, port, leak, force, 90e3);
    }

    private static SpringValve plate(double force) {
        return plate(3e-3, 1, AdditiveLaw.NONE, 0, force);
    }

    @Test
    void springAloneDecidesTheLiftWithoutFlowForce() {
        // pi/4 x 144 mm2 x 20 kPa/(1.5 N/mm) = 1.50796 mm
        assertEquals(0, plate(0).lift(100e3));
        assertEquals(1.50796e-3, plate(0).lift(120e3), 5e-9);
        assertEquals(3e-3, plate(0).lift(200e3));
    }

    @Test
    void flowForceHoldsTheLidBack() {
        // z 2 Cd pi d cos 69 deg = 0.3 x 2 x 0.62 x 37.6991 mm x 0.358368 = 5.02578 mm; at 120 kPa that is 603.09 N/m
        // more
        // spring: 2.261947 N/(2103.09 N/m) = 1.07553 mm
        assertEquals(1.07553e-3, plate(0.3).lift(120e3), 5e-9);
    }

    @Test
    void fullLiftWithFlowForceNeedsMorePressure() {
        // A (dp - pc) = (k + kf) x at 3 mm: (11.30973 + 4.5) N/(113.0973 - 15.0773) mm2 = 161.291 kPa, without force
        // 139.789
        assertEquals(PRESSURE_OF_FULL_LIFT, plate(0.3).fullLiftPressure(), 0.5);
        assertEquals(139.789e3, plate(0).fullLiftPressure(), 0.5);
    }

    @Test
    void lidReachesItsStopAtThePressureOfFullLiftAndNotBefore() {
        // corner: the last 0.2 % of pressure lie within a thousandth of the lift
        assertEquals(3e-3, plate(0.3).lift(1.002 * PRESSURE_OF_FULL_LIFT), 1e-18);
        assertTrue(plate(0.3).lift(0.99 * PRESSURE_OF_FULL_LIFT) < 0.99 * 3e-3);
    }

    @Test
    void strongFlowForceForbidsFullLift() {
        // z = 1: the force on 6.751 mm of lift outweighs any pressure on the seat
        assertTrue(Double.isFinite(plate(6.7e-3, 1, AdditiveLaw.NONE, 0, 1).fullLiftPressure()));
        assertEquals(
                Double.POSITIVE_INFINITY,
                plate(6.8e-3, 1, AdditiveLaw.NONE, 0, 1).fullLiftPressure());
    }

    @Test
    void flowForceLowersTheFlowOfALidInBetween() {
        // the lid with force stands at 1.07553 mm, where a lid without stands at 100 + 20 x 1.07553/1.50796 kPa
        Fluid oil = new Fluid(0.2, 870);
        AdditiveLaw slit = new AdditiveLaw(
                32 / (Math.PI * 1.07553e-3 * 1.07553e-3 * Math.PI * 12e-3),
                1 / (2 * Math.pow(0.62 * Math.PI * 12e-3 * 1.07553e-3, 2)));
        double expected = slit.flowRate(120e3, oil);
        assertEquals(expected, plate(0.3).flowRate(120e3, oil), 1e-5 * expected);
    }

    @Test
    void slopeWithFlowForceIsTheDerivativeOfTheFlow() {
        SpringValve valve = plate(3e-3, 0.7, Openings.hole(9e-3, 2e-3, 0.7), 1e-16, 0.3);
        for (Fluid oil : new Fluid[] {COLD, HOT}) {
            for (double dp = 101e3; dp < 260e3; dp += 2345.6) {
                double numeric = (valve.flowRate(dp + 1, oil) - valve.flowRate(dp - 1, oil)) / 2;
                assertEquals(numeric, valve.flowSlope(dp, oil), 1e-5 * numeric);
            }
        }
    }

    @Test
    void leakAndFlowOfTheSlitAdd() {
        double seep = 1e-11 * 150e3 / 0.01;
        SpringValve tight = plate(3e-3, 1, AdditiveLaw.NONE, 0, 0);
        SpringValve leaky = plate(3e-3, 1, AdditiveLaw.NONE, 1e-11, 0);
        assertEquals(seep, leaky.flowRate(150e3, HOT) - tight.flowRate(150e3, HOT), 1e-9 * seep);
        assertEquals(
                seep,
                leaky.passage(150e3, HOT).flowRate() - tight.passage(150e3, HOT).flowRate(),
                1e-9 * seep);
        assertEquals(leaky.flowRate(150e3, HOT), leaky.passage(150e3, HOT).flowRate());
        assertEquals(-1e-11 * 50e3 / 0.01, leaky.passage(-50e3, HOT).flowRate(), 1e-18);
    }

    @Test
    void seatIsACircle() {
        assertEquals(113.097e-6, plate(0).seatArea(), 0.001e-6);
    }

    @Test
    void liftBeyondTheBoreAreaWidensNothing() {
        // the curtain equals the bore at d/4 = 3 mm, with half of the edge at 6 mm
        double most = plate(3e-3, 1, AdditiveLaw.NONE, 0, 0).flowRate(900e3, HOT);
        assertEquals(most, plate(5e-3, 1, AdditiveLaw.NONE, 0, 0).flowRate(900e3, HOT), 1e-15);
        assertEquals(most, plate(7e-3, 0.5, AdditiveLaw.NONE, 0, 0).flowRate(900e3, HOT), 0.05 * most);
        assertTrue(plate(5e-3, 0.5, AdditiveLaw.NONE, 0, 0).flowRate(900e3, HOT) < 0.9 * most);
    }

    @Test
    void anotherSettingKeepsTheRatioOfClosingToOpening() {
        SpringValve valve = plate(3e-3, 0.7, Openings.hole(9e-3, 2e-3, 0.7), 1e-16, 0.3);
        SpringValve set = valve.withOpeningPressure(200e3);
        assertEquals(200e3, set.openingPressure());
        assertEquals(180e3, set.closingPressure(), 1e-9);
        assertEquals(valve, set.withOpeningPressure(100e3));
    }

    @Test
    void openedValveHangsAtItsStop() {
        SpringValve valve = plate(3e-3, 0.7, Openings.hole(9e-3, 2e-3, 0.7), 1e-16, 0.3);
        SpringValve opened = valve.afterOpening();
        assertEquals(100e3, opened.openingPressure());
        assertEquals(90e3, opened.shutsAt());
        assertEquals(3e-3, opened.hangingLift());
        assertEquals(valve.seatArea(), opened.seatArea());
        assertEquals(0.3, opened.flowForceFactor());
        assertEquals(opened, opened.afterOpening());
    }

    @Test
    void valveWithoutKnownClosingPressureStaysAsItIs() {
        SpringValve unknown = new SpringValve(100e3, 12e-3, 1500, 3e-3, 1, 0.62, AdditiveLaw.NONE, 0, 0, 0);
        assertEquals(unknown, unknown.afterOpening());
    }

    @Test
    void cornersAreAThousandthOfOpeningPressureAndOfFullLift() {
        // the cubic y^2 (2 w - y)/w^2 is 3/8 w at half of its width
        double perPascal = Math.PI * 36e-6 / 1500;
        assertEquals(37.5 * perPascal, plate(0).lift(100_050), 1e-15);
        assertEquals(100 * perPascal, plate(0).lift(100_100), 1e-15);
        double halfway = 100e3 + (3e-3 - 1.5e-6) / perPascal;
        assertEquals(3e-3 - 3e-6 * 0.375, plate(0).lift(halfway), 1e-15);
    }

    @Test
    void slopeFollowsTheFlowThroughBothCorners() {
        // 10 Pa apart through the first corner of 100 Pa and through the second of 40 Pa before 139.789 kPa
        for (double dp = 100_005; dp < 100_150; dp += 10) {
            assertSlope(plate(0), dp);
        }
        for (double dp = 139_705; dp < 139_850; dp += 10) {
            assertSlope(plate(0), dp);
        }
    }

    private static void assertSlope(SpringValve valve, double dp) {
        double h = 0.01;
        double numeric = (valve.flowRate(dp + h, COLD) - valve.flowRate(dp - h, COLD)) / (2 * h);
        assertEquals(numeric, valve.flowSlope(dp, COLD), 1e-4 * numeric);
    }

    @Test
    void leakAddsToTheSlopeAsWell() {
        double leak = 1e-11 / 0.01;
        double tight = plate(3e-3, 1, AdditiveLaw.NONE, 0, 0).flowSlope(120e3, HOT);
        assertEquals(leak, plate(3e-3, 1, AdditiveLaw.NONE, 1e-11, 0).flowSlope(120e3, HOT) - tight, 1e-6 * leak);
        assertEquals(leak, plate(3e-3, 1, AdditiveLaw.NONE, 1e-11, 0).flowSlope(50e3, HOT), 1e-22);
    }

    @Test
    void discOpensAllAroundWithoutFrictionAndFlowForce() {
        assertEquals(
                new SpringValve(80e3, 11e-3, 900, 4e-3, 1, 0.62, AdditiveLaw.NONE, 1e-16, 0, 80e3),
                SpringValve.disc(80e3, 11e-3, 900, 4e-3, 1e-16));
    }
}
