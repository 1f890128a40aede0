package org.coldpleat.model.valve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.Fluid;
import org.junit.jupiter.api.Test;

class FlapValveTest {
    private static final FlapValve FLAP = new FlapValve(3e-7, 800, 1.5e-3, 0.12, 1e-15);

    @Test
    void javadocExampleStripCompliance() {
        assertEquals(0.34e-6, FlapValve.stripCompliance(8e-3, 1.5e-3, 4e6, 0.5), 0.005e-6);
    }

    @Test
    void dropInvertsFlowAndRises() {
        for (Fluid oil : new Fluid[] {new Fluid(2, 890), new Fluid(0.012, 850)}) {
            double last = 0;
            for (double q = 1e-12; q < 1e-2; q *= 1.7) {
                Drop drop = FLAP.at(q, oil);
                assertEquals(q, FLAP.flowRate(drop.pressureDrop(), oil), 1e-9 * q);
                assertTrue(drop.pressureDrop() > last && drop.slope() > 0);
                last = drop.pressureDrop();
            }
        }
    }

    @Test
    void dropIsOddAndZeroAtZeroFlow() {
        Fluid oil = new Fluid(0.5, 870);
        assertEquals(0, FLAP.pressureDrop(0, oil));
        assertEquals(-FLAP.pressureDrop(1e-4, oil), FLAP.pressureDrop(-1e-4, oil));
    }

    @Test
    void slopeIsTheDerivativeOfTheDrop() {
        Fluid oil = new Fluid(0.5, 870);
        for (double q = 1e-6; q < 1e-3; q *= 1.5) {
            double h = 1e-5 * q;
            double numeric = (FLAP.pressureDrop(q + h, oil) - FLAP.pressureDrop(q - h, oil)) / (2 * h);
            assertEquals(numeric, FLAP.slope(q, oil), 1e-4 * numeric);
        }
    }

    private static final Fluid WARM = new Fluid(0.01, 850);

    /** Lip of a sharp edge: 0.3 mm/kPa from 0.8 kPa on, up to 1.5 mm, 120 mm long. */
    private static FlapValve lip(double leak) {
        return new FlapValve(3e-7, 800, 1.5e-3, 0.12, leak);
    }

    @Test
    void complianceOfAStripFollowsFromTheClampedBeam() {
        // 1.5 x 8^4 x 0.75/(4 x 1.5^3) in mm and MPa: 4608/13.5 = 341.33 mm/MPa
        assertEquals(341.3333e-9, FlapValve.stripCompliance(8e-3, 1.5e-3, 4e6, 0.5), 0.0001e-9);
        assertEquals(1.5e-6, FlapValve.stripCompliance(1e-2, 1e-2, 1e4, 0), 1e-18);
    }

    @Test
    void lipLiftsFromItsPreloadOnAndStopsWhereItsRoomEnds() {
        FlapValve lip = lip(1e-15);
        assertEquals(0, lip.lift(800));
        assertEquals(0.66e-3, lip.lift(3000), 1e-15);
        // 1.5 mm at 800 + 1.5e-3/3e-7 = 5800 Pa; the corner before it is a thousandth of the room wide
        assertEquals(1.4984e-3, lip.lift(5800 - 1.6e-6 / 3e-7), 1e-15);
        assertEquals(1.5e-3, lip.lift(6000));
    }

    @Test
    void cornerOverThePreloadIsAThousandthOfThePressureOfFullLift() {
        // a cubic reaches 5/8 of its width at the middle of it
        assertEquals(3e-7 * 5.8 * 0.375, lip(1e-15).lift(800 + 5.8 / 2), 1e-16);
        assertEquals(3e-7 * 5.8, lip(1e-15).lift(800 + 5.8), 1e-16);
    }

    @Test
    void liftedLipPassesTheFlowOfItsSlit() {
        // slit of 120 mm: psi = 32/(pi x^2 P), b = 1/(2 (0.62 P x)^2); leak of the shut lip besides
        // 3 kPa: x 0.66 mm, psi 1.94864e8 1/m3, b 2.07365e8 1/m4: 7.5031 L/min
        assertEquals(7.5031 / 60e3, lip(1e-22).flowRate(3000, WARM), 0.0001 / 60e3);
        // 20 kPa: x 1.5 mm, psi 3.77256e7 1/m3, b 4.01459e7 1/m4: 45.6037 L/min
        assertEquals(45.6037 / 60e3, lip(1e-22).flowRate(20e3, WARM), 0.0001 / 60e3);
        // 2 Pa s, 890 kg/m3 at 3 kPa: creeping, 0.46019 L/min
        assertEquals(0.46019 / 60e3, lip(1e-22).flowRate(3000, new Fluid(2, 890)), 0.00001 / 60e3);
    }

    @Test
    void shutLipPassesItsLeakAlone() {
        assertEquals(1e-15 * 700 / 0.01, lip(1e-15).flowRate(700, WARM), 1e-25);
        assertEquals(1e-15 / 0.01, lip(1e-15).flowSlope(700, WARM), 1e-28);
        assertEquals(0.01 / 1e-15, lip(1e-15).at(0, WARM).slope(), 1);
    }

    @Test
    void leakAddsToTheFlowOfTheSlit() {
        double leak = 1e-10 * 3000 / 0.01;
        assertEquals(leak, lip(1e-10).flowRate(3000, WARM) - lip(1e-22).flowRate(3000, WARM), 1e-9 * leak);
    }

    @Test
    void flowTurnsWithTheDifference() {
        FlapValve lip = lip(1e-12);
        for (double dp : new double[] {500, 3000, 20e3}) {
            assertEquals(-lip.flowRate(dp, WARM), lip.flowRate(-dp, WARM));
            assertEquals(
                    -lip.passage(dp, WARM).flowRate(), lip.passage(-dp, WARM).flowRate());
            assertEquals(lip.flowSlope(dp, WARM), lip.flowSlope(-dp, WARM));
        }
    }

    @Test
    void passageIsTheFlowAndItsDerivative() {
        FlapValve lip = lip(1e-12);
        for (double dp = 100; dp < 9000; dp += 123.4) {
            double h = 1e-3;
            double numeric = (lip.flowRate(dp + h, WARM) - lip.flowRate(dp - h, WARM)) / (2 * h);
            assertEquals(lip.flowRate(dp, WARM), lip.passage(dp, WARM).flowRate(), 1e-18);
            // rounding of the difference: 1e-16 of the flow over 1e-3 Pa
            assertEquals(numeric, lip.flowSlope(dp, WARM), 1e-4 * numeric);
        }
    }

    @Test
    void dropOfAFlowIsFoundToRounding() {
        for (Fluid oil : new Fluid[] {new Fluid(30, 900), WARM}) {
            for (double q = 1e-11; q < 1e-2; q *= 3) {
                double drop = lip(1e-15).pressureDrop(q, oil);
                double slope = lip(1e-15).flowSlope(drop, oil);
                // pressures and lifts are rounded, the lifts to a part of the full one
                double rounding = Math.ulp(drop) * slope
                        + q * Math.ulp(1.5e-3) / Math.max(lip(1e-15).lift(drop), 1e-10);
                assertEquals(q, lip(1e-15).flowRate(drop, oil), 2 * rounding + 1e-14 * q);
                assertEquals(1 / slope, lip(1e-15).slope(q, oil), 1e-6 / slope);
            }
        }
    }

    @Test
    void searchStartsWhereALipOfSharpEdgeWouldStand() {
        FlapValve lip = lip(1e-15);
        for (Fluid oil : new Fluid[] {new Fluid(30, 900), WARM}) {
            for (double x = 1e-6; x < 1.5e-3; x *= 1.3) {
                // the lip stands at lift x under p0 + x/C; the flow of a slit of that lift, without corner and leak
                double dp = 800 + x / 3e-7;
                double q = new LiftedSlit(0.12, 0.62, AdditiveLaw.NONE).flowRate(x, dp, oil);
                assertEquals(dp, lip.cornerless(q, oil), 1e-9 * dp);
            }
            double full = new LiftedSlit(0.12, 0.62, AdditiveLaw.NONE).flowRate(1.5e-3, 30e3, oil);
            assertEquals(30e3, lip.cornerless(full, oil), 1e-9 * 30e3);
        }
    }

    @Test
    void lipWithoutPreloadStartsAtTheCubeRoot() {
        // dp x^2 = A and x = C dp: dp^3 = A/C^2
        FlapValve loose = new FlapValve(3e-7, 0, 1.5e-3, 0.12, 1e-15);
        double q = new LiftedSlit(0.12, 0.62, AdditiveLaw.NONE).flowRate(3e-4, 1000, WARM);
        assertEquals(1000, loose.cornerless(q, WARM), 1e-9);
    }
}
