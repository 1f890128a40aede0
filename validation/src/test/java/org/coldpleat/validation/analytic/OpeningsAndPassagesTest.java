package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.junit.jupiter.api.Test;

/** Exact limits of creeping flow and textbook laws. */
class OpeningsAndPassagesTest {
    private static final double LITER_PER_MINUTE = 1e-3 / 60;

    /** Sampson 1891, exact: Q = dp d^3/(24 mu). Tolerance: five printed digits. */
    @Test
    void thinHoleCreepsAsSampsonFound() {
        AdditiveLaw hole = Openings.hole(2e-3, 0, Openings.SHARP_EDGE);
        assertEquals(3.3333e-6, hole.flowRate(1000, new Fluid(0.1, 0)), 5e-11);
        assertEquals(1e-8 / 3e-3, hole.flowRate(1000, new Fluid(0.1, 0)), 1e-15);
    }

    /** zeta Re = 12 pi + 64 L/d. Derived here from Sampson and Poiseuille; five digits. */
    @Test
    void thickHoleAddsPoiseuilleFlow() {
        assertEquals(44.10, zetaTimesReynolds(0.10), 0.005);
        assertEquals(61.38, zetaTimesReynolds(0.37), 0.005);
    }

    /**
     * Finite elements: 41.8 at L/d 0.10 and 57.7 at 0.37, University of Washington, course ChemE 499, orifice study. The
     * coefficient's definition there is inferred, and the sum of two exact limits lies 5-6 % above: 7 %.
     */
    @Test
    void thickHoleAgreesWithFiniteElements() {
        assertEquals(41.8, zetaTimesReynolds(0.10), 0.07 * 41.8);
        assertEquals(57.7, zetaTimesReynolds(0.37), 0.07 * 57.7);
    }

    /** Cd/sqrt(Re) -> 1/sqrt(12 pi) = 0.162868 for creeping flow through a thin hole; derived here, exact. At Re 1e-4 the
     * inertial term still takes 3e-6 off. */
    @Test
    void creepingDischargeCoefficientFollowsTheRootOfReynolds() {
        assertEquals(0.162868, dischargeCoefficient(1e-4) / Math.sqrt(1e-4), 1e-3 * 0.162868);
        assertEquals(1 / Math.sqrt(12 * Math.PI), dischargeCoefficient(1e-4) / Math.sqrt(1e-4), 1e-5);
    }

    /** Merritt 1967 (as quoted in handbooks): sharp edges 0.60-0.65 at high Reynolds number. Tolerance: the creeping term
     * takes 7e-6 off at Re 1e6. */
    @Test
    void dischargeCoefficientReachesItsTurbulentValue() {
        assertEquals(0.61, dischargeCoefficient(1e6), 1e-4);
    }

    /** Same curve as Borutzky, Barnard, Thoma 2002; values derived here, five to six digits. */
    @Test
    void additiveHoleMatchesWorkedValues() {
        AdditiveLaw hole = Openings.hole(2e-3, 0, 0.61);
        Fluid oil = new Fluid(0.1, 870);
        assertEquals(1.9032e-6, hole.flowRate(1e3, oil), 1e-4 * 1.9032e-6);
        assertEquals(8.0088e-6, hole.flowRate(1e4, oil), 1e-4 * 8.0088e-6);
        assertEquals(2.78172e-5, hole.flowRate(1e5, oil), 1e-4 * 2.78172e-5);
    }

    /**
     * Remembered form of Borutzky, Barnard, Thoma 2002: Q = sqrt[(A nu Rt/2d)^2 + (Ct A)^2 2dp/rho] - A nu Rt/2d with
     * Rt = 12 pi Ct^2: algebraically the same. Tolerance: cancellation in that form.
     */
    @Test
    void additiveHoleEqualsTheTransitionNumberForm() {
        double d = 1.3e-3;
        double area = Math.PI * d * d / 4;
        double ct = 0.61;
        for (double dp : new double[] {1e2, 1e4, 1e6}) {
            Fluid oil = new Fluid(0.05, 860);
            double half = area * oil.dynamicViscosity() / oil.density() * 12 * Math.PI * ct * ct / (2 * d);
            double expected = Math.sqrt(half * half + ct * ct * area * area * 2 * dp / oil.density()) - half;
            assertEquals(expected, Openings.hole(d, 0, ct).flowRate(dp, oil), 1e-9 * expected);
        }
    }

    /** Hasimoto 1958 / derived here: 32/(pi w^2). Five digits. */
    @Test
    void thinSlitResistance() {
        assertEquals(1.5915e7, Openings.thinSlit(0.8e-3), 1e-4 * 1.5915e7);
    }

    /** Square duct: f Re = 56.91 (White, Viscous Fluid Flow, table 3-3, from memory), so psi = 28.454 t/a^4. */
    @Test
    void squareSlotCarriesWhatASquareDuctDoes() {
        double a = 1e-3;
        double entrance = Openings.slot(a, a, 0, 0.6).laminar();
        double duct = Openings.slot(a, a, 5e-3, 0.6).laminar() - entrance;
        assertEquals(56.908 / 2 * 5e-3 / Math.pow(a, 4), duct, 1e-4 * duct);
    }

    /** Exact annulus against the flat-slot form 12 mu L Q/(pi Dm h^3); derived here, six digits. */
    @Test
    void annulusMatchesExactAndSlotForms() {
        AdditiveLaw annulus = Passages.annulus(32.5e-3, 30e-3, 70e-3);
        Fluid oil = new Fluid(0.5, 870);
        double drop = annulus.pressureDrop(1e-4, oil);
        assertEquals(13688.4, drop, 1e-5 * drop);
        double slot = 12 * 0.5 * 70e-3 * 1e-4 / (Math.PI * 62.5e-3 * Math.pow(2.5e-3, 3));
        assertEquals(13689.9, slot, 1e-5 * slot);
        assertEquals(drop, slot, 1.2e-4 * drop);
        // withdrawn evenly along the length: half of it at the far end
        assertEquals(6844.2, drop / 2, 1e-5 * drop);
    }

    /** The series used for narrow gaps must join the exact form; the next term of the series is of order e^4/1000. */
    @Test
    void narrowAnnulusJoinsTheExactForm() {
        double below = Passages.annulus(30e-3, 30e-3 * 0.980001, 1).laminar() * Math.pow(1 - 0.980001, 3);
        double above = Passages.annulus(30e-3, 30e-3 * 0.979999, 1).laminar() * Math.pow(1 - 0.979999, 3);
        assertEquals(below, above, 2e-6 * above);
    }

    /** Hagen-Poiseuille, five digits. */
    @Test
    void tubeFollowsPoiseuille() {
        assertEquals(81487, Passages.tube(10e-3, 0.4).pressureDrop(1e-4, new Fluid(0.5, 870)), 0.5);
    }

    /** Q = pi h^3 dp/(6 mu ln(r2/r1)), lubrication theory; five digits. */
    @Test
    void radialFilmFollowsLubricationTheory() {
        double flow = Passages.radialFilm(0.2e-3, 6e-3, 8e-3).flowRate(100e3, new Fluid(0.5, 870));
        assertEquals(0.17473, flow / LITER_PER_MINUTE, 1e-4 * 0.17473);
    }

    private static double zetaTimesReynolds(double aspect) {
        double d = 3e-3;
        double area = Math.PI * d * d / 4;
        double psi = Openings.hole(d, aspect * d, 0.61).laminar();
        // zeta Re = dp/(rho u^2/2) * rho u d/mu = 2 psi A d
        return 2 * psi * area * d;
    }

    private static double dischargeCoefficient(double reynolds) {
        double d = 1e-3;
        Fluid oil = new Fluid(0.01, 850);
        double area = Math.PI * d * d / 4;
        double velocity = reynolds * oil.dynamicViscosity() / (oil.density() * d);
        double drop = Openings.hole(d, 0, 0.61).pressureDrop(velocity * area, oil);
        return velocity / Math.sqrt(2 * drop / oil.density());
    }
}
