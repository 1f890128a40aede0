package org.coldpleat.validation.analytic;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Exact limits of creeping flow and textbook laws. */
class OpeningsAndPassagesTest {
    private static final String SOURCE = "derived here";

    /** Sampson 1891, exact: Q = dp d^3/(24 mu). Tolerance: five printed digits. */
    @Test
    void thinHoleCreepsAsSampsonFound() {
        AdditiveLaw hole = Openings.hole(2e-3, 0, Openings.SHARP_EDGE);
        ExternalCheck.of(Topic.OPENINGS, "creeping flow through a thin hole", "Sampson 1891, exact")
                .expected(3.3333e-6, "m3/s")
                .computed(hole.flowRate(1000, new Fluid(0.1, 0)))
                .within(5e-11, "five digits");
        ExternalCheck.of(Topic.OPENINGS, "creeping flow through a thin hole, formula", "Sampson 1891, exact")
                .expected(1e-8 / 3e-3, "m3/s")
                .computed(hole.flowRate(1000, new Fluid(0.1, 0)))
                .within(1e-15, "arithmetic");
    }

    /** zeta Re = 12 pi + 64 L/d. Derived here from Sampson and Poiseuille; five digits. */
    @Test
    void thickHoleAddsPoiseuilleFlow() {
        ExternalCheck.of(Topic.OPENINGS, "zeta Re of a hole, L/d 0.10", "Sampson and Poiseuille, derived here")
                .expected(44.10, "1")
                .computed(zetaTimesReynolds(0.10))
                .within(0.005, "half the last digit");
        ExternalCheck.of(Topic.OPENINGS, "zeta Re of a hole, L/d 0.37", "Sampson and Poiseuille, derived here")
                .expected(61.38, "1")
                .computed(zetaTimesReynolds(0.37))
                .within(0.005, "half the last digit");
    }

    /**
     * Finite elements: 41.8 at L/d 0.10 and 57.7 at 0.37, University of Washington, course ChemE 499, orifice study. The
     * coefficient's definition there is inferred, and the sum of two exact limits lies 5-6 % above: 7 %.
     */
    @Test
    void thickHoleAgreesWithFiniteElements() {
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "zeta Re of a hole against finite elements, L/d 0.10",
                        "University of Washington, ChemE 499, orifice study")
                .toleranceSetAfterwards()
                .expected(41.8, "1")
                .computed(zetaTimesReynolds(0.10))
                .withinRelative(
                        0.07,
                        "the sum of two exact limits was found 5 to 6 % above; the definition of the coefficient is inferred");
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "zeta Re of a hole against finite elements, L/d 0.37",
                        "University of Washington, ChemE 499, orifice study")
                .toleranceSetAfterwards()
                .expected(57.7, "1")
                .computed(zetaTimesReynolds(0.37))
                .withinRelative(
                        0.07,
                        "the sum of two exact limits was found 5 to 6 % above; the definition of the coefficient is inferred");
    }

    /** Cd/sqrt(Re) -> 1/sqrt(12 pi) = 0.162868 for creeping flow through a thin hole; derived here, exact. At Re 1e-4 the
     * inertial term still takes 3e-6 off. */
    @Test
    void creepingDischargeCoefficientFollowsTheRootOfReynolds() {
        check("creeping discharge coefficient over the root of Re")
                .expected(0.162868, "1")
                .computed(dischargeCoefficient(1e-4) / Math.sqrt(1e-4))
                .withinRelative(1e-3, "four digits");
        check("creeping discharge coefficient over the root of Re, formula")
                .expected(1 / Math.sqrt(12 * Math.PI), "1")
                .computed(dischargeCoefficient(1e-4) / Math.sqrt(1e-4))
                .within(1e-5, "the inertial term still takes 3e-6 off");
    }

    /** Merritt 1967 (as quoted in handbooks): sharp edges 0.60-0.65 at high Reynolds number. Tolerance: the creeping term
     * takes 7e-6 off at Re 1e6. */
    @Test
    void dischargeCoefficientReachesItsTurbulentValue() {
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "discharge coefficient of sharp edges at high Re",
                        "Merritt 1967, as quoted in handbooks")
                .expected(0.61, "1")
                .computed(dischargeCoefficient(1e6))
                .within(
                        1e-4,
                        "the creeping term takes 7e-6 off; 0.61 is what goes in, within the 0.60 to 0.65 of the source");
    }

    /** Same curve as Borutzky, Barnard, Thoma 2002; values derived here, five to six digits. */
    @Test
    void additiveHoleMatchesWorkedValues() {
        AdditiveLaw hole = Openings.hole(2e-3, 0, 0.61);
        Fluid oil = new Fluid(0.1, 870);
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "flow through a hole at 1 kPa",
                        "worked here, curve of Borutzky, Barnard, Thoma 2002")
                .expected(1.9032e-6, "m3/s")
                .computed(hole.flowRate(1e3, oil))
                .withinRelative(1e-4, "five digits");
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "flow through a hole at 10 kPa",
                        "worked here, curve of Borutzky, Barnard, Thoma 2002")
                .expected(8.0088e-6, "m3/s")
                .computed(hole.flowRate(1e4, oil))
                .withinRelative(1e-4, "five digits");
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "flow through a hole at 100 kPa",
                        "worked here, curve of Borutzky, Barnard, Thoma 2002")
                .expected(2.78172e-5, "m3/s")
                .computed(hole.flowRate(1e5, oil))
                .withinRelative(1e-4, "five digits");
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
            ExternalCheck.of(
                            Topic.OPENINGS,
                            "flow through a hole in the form of a transition number",
                            "Borutzky, Barnard, Thoma 2002, from memory")
                    .at(dp + " Pa")
                    .expected(expected, "m3/s")
                    .computed(Openings.hole(d, 0, ct).flowRate(dp, oil))
                    .withinRelative(1e-9, "cancellation in that form");
        }
    }

    /** Hasimoto 1958 / derived here: 32/(pi w^2). Five digits. */
    @Test
    void thinSlitResistance() {
        ExternalCheck.of(Topic.OPENINGS, "resistance of a thin slit", "Hasimoto 1958, derived here")
                .expected(1.5915e7, "1/m3")
                .computed(Openings.thinSlit(0.8e-3))
                .withinRelative(1e-4, "five digits");
    }

    /** Square duct: f Re = 56.91 (White, Viscous Fluid Flow, table 3-3, from memory), so psi = 28.454 t/a^4. */
    @Test
    void squareSlotCarriesWhatASquareDuctDoes() {
        double a = 1e-3;
        double entrance = Openings.slot(a, a, 0, 0.6).laminar();
        double duct = Openings.slot(a, a, 5e-3, 0.6).laminar() - entrance;
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "resistance of a square duct",
                        "White, Viscous Fluid Flow, table 3-3, from memory")
                .expected(56.908 / 2 * 5e-3 / Math.pow(a, 4), "1/m3")
                .computed(duct)
                .within(1e-4 * duct, "four digits");
    }

    /** Exact annulus against the flat-slot form 12 mu L Q/(pi Dm h^3); derived here, six digits. */
    @Test
    void annulusMatchesExactAndSlotForms() {
        AdditiveLaw annulus = Passages.annulus(32.5e-3, 30e-3, 70e-3);
        Fluid oil = new Fluid(0.5, 870);
        double drop = annulus.pressureDrop(1e-4, oil);
        check("drop of an annulus, exact")
                .expected(13688.4, "Pa")
                .computed(drop)
                .within(1e-5 * drop, "six digits");
        double slot = 12 * 0.5 * 70e-3 * 1e-4 / (Math.PI * 62.5e-3 * Math.pow(2.5e-3, 3));
        check("drop of an annulus, slot form by hand")
                .expected(13689.9, "Pa")
                .computed(slot)
                .within(1e-5 * slot, "six digits");
        check("drop of an annulus, exact against slot form")
                .expected(drop, "Pa")
                .computed(slot)
                .withinRelative(1.2e-4, "next term of the gap over the radius");
        // withdrawn evenly along the length: half of it at the far end
        check("drop of an annulus drawn off along its length")
                .expected(6844.2, "Pa")
                .computed(drop / 2)
                .within(1e-5 * drop, "six digits");
    }

    /** The series used for narrow gaps must join the exact form; the next term of the series is of order e^4/1000. */
    @Test
    void narrowAnnulusJoinsTheExactForm() {
        double below = Passages.annulus(30e-3, 30e-3 * 0.980001, 1).laminar() * Math.pow(1 - 0.980001, 3);
        double above = Passages.annulus(30e-3, 30e-3 * 0.979999, 1).laminar() * Math.pow(1 - 0.979999, 3);
        check("narrow annulus at the joint of its two forms")
                .expected(below, "1/m3")
                .computed(above)
                .within(2e-6 * above, "next term of the series and the step between the two points");
    }

    /** Hagen-Poiseuille, five digits. */
    @Test
    void tubeFollowsPoiseuille() {
        ExternalCheck.of(Topic.OPENINGS, "drop of a tube", "Hagen-Poiseuille, derived here")
                .expected(81487, "Pa")
                .computed(Passages.tube(10e-3, 0.4).pressureDrop(1e-4, new Fluid(0.5, 870)))
                .within(0.5, "half the last digit");
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

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OPENINGS, quantity, SOURCE);
    }
}
