package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.GroovedBearing;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Relief.Sensing;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.CircuitLimits;
import org.junit.jupiter.api.Test;

/**
 * The full solver against closed forms of laminar circuits (derived here: two resistances in series behind a pump with
 * slip, three lines of algebra each). Reference ring: displacement 7.2 cm3/rev, 20 rev/s, slip 2.9e-12 m3, filter 2e9,
 * gallery 8e9 1/m3, relief 490 kPa, bypass 157 kPa.
 */
class CircuitClosedFormsTest {
    private static final String SOURCE = "derived here";

    private static final double LITER_PER_MINUTE = 1e-3 / 60;
    private static final double ROOM = 293.15;
    private static final Pump PUMP = Pump.unlimited(7.2e-6, 2.9e-12);
    private static final double FILTER = 2e9;
    private static final double GALLERY = 8e9;
    private static final double RELIEF = 490e3;
    private static final double BYPASS = 157e3;

    /** A bypass valve close to ideal: soft spring and huge bore, so that it hardly rises above its setting. */
    private static final SpringValve NEARLY_IDEAL = SpringValve.disc(BYPASS, 0.5, 1, 0.1, 0);

    private static FilterAssembly filter(double resistance) {
        return FilterAssembly.ofPack(resistance).withBypass(BypassLocation.BASE, NEARLY_IDEAL);
    }

    private static EngineCircuit ring(FilterAssembly filter, double gallery, double viscosity, Relief... reliefs) {
        return new EngineCircuit(
                PUMP, List.of(reliefs), filter.law(), Gallery.laminar(gallery), new OneViscosity(viscosity, 0));
    }

    private static OperatingPoint converged(EngineCircuit circuit) {
        OperatingPoint point = circuit.solve(20, ROOM);
        assertEquals(SolveStatus.CONVERGED, point.status());
        assertTrue(point.residuals().largest() < 1e-9);
        return point;
    }

    /** Relief shut: flow D n/(1 + lam Psi) does not depend on viscosity. Five digits. */
    @Test
    void flowIsIndependentOfViscosityWhileReliefAndBypassAreShut() {
        double expected = ClosedForms.shutFlow(PUMP, 20, FILTER, GALLERY);
        check("pump flow with relief and bypass shut")
                .expected(8.3965, "1")
                .computed(expected / LITER_PER_MINUTE)
                .within(5e-5, "half the last digit");
        for (double mu : new double[] {0.001, 0.01, 0.1, 0.349}) {
            OperatingPoint point =
                    converged(ring(filter(FILTER), GALLERY, mu, Relief.ideal(Sensing.PUMP_OUTLET, RELIEF)));
            check("flow with relief and bypass shut, by the solver")
                    .at(mu + " Pa s")
                    .expected(expected, "m3/s")
                    .computed(point.filterFlow())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
            check("filter drop over viscosity")
                    .at(mu + " Pa s")
                    .expected(2.7988e5, "1/s")
                    .computed(point.filterDrop() / mu)
                    .withinRelative(1e-4, "five digits");
            assertEquals(0, point.reliefFlow());
        }
        check("viscosity at which the relief opens")
                .expected(0.350, "Pa s")
                .computed(CircuitLimits.reliefViscosity(RELIEF, FILTER, GALLERY, expected))
                .within(5e-4, "half the last digit");
    }

    /** Ideal relief open: s p_r = 98 kPa at every viscosity; exact, so solver tolerance. */
    @Test
    void reliefCeilingHoldsHoweverCold() {
        double ceiling = ClosedForms.reliefCeiling(FILTER, GALLERY, RELIEF);
        check("ceiling of the filter drop under a relief")
                .expected(98e3, "Pa")
                .computed(ceiling)
                .within(1e-6, "arithmetic");
        for (double mu : new double[] {1, 3, 10, 1000}) {
            EngineCircuit circuit = ring(filter(FILTER), GALLERY, mu, Relief.ideal(Sensing.PUMP_OUTLET, RELIEF));
            OperatingPoint point = converged(circuit);
            check("filter drop under the open relief")
                    .at(mu + " Pa s")
                    .expected(ceiling, "Pa")
                    .computed(point.filterDrop())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
            check("pump pressure under the open relief")
                    .at(mu + " Pa s")
                    .expected(RELIEF, "Pa")
                    .computed(point.pumpPressure())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
            assertFalse(
                    filter(FILTER).solve(point.filterFlow(), new Fluid(mu, 0)).isBypassOpen());
        }
    }

    /** A stiff override of 1e6 Pa s/m3 comes within 0.1 % of the ideal valve. */
    @Test
    void stiffOverrideApproachesTheIdealRelief() {
        OperatingPoint point =
                converged(ring(filter(FILTER), GALLERY, 3, Relief.linear(Sensing.PUMP_OUTLET, RELIEF, 1e6)));
        check("filter drop under a relief of stiff override")
                .expected(98e3, "Pa")
                .computed(point.filterDrop())
                .withinRelative(1e-3, "the override itself");
    }

    /** psi_f/psi_g 1 % either side of p_b/(p_r - p_b) = 0.4715: shut and open in deep cold. */
    @Test
    void bypassFlipsAtTheCriticalRatio() {
        double critical = ClosedForms.criticalRatio(BYPASS, RELIEF);
        check("critical ratio of filter to gallery resistance")
                .expected(0.4715, "1")
                .computed(critical)
                .within(5e-5, "half the last digit");
        for (double mu : new double[] {5, 50, 500}) {
            assertFalse(deepCold(0.99 * critical, mu, Sensing.PUMP_OUTLET).isBypassOpen());
            assertTrue(deepCold(1.01 * critical, mu, Sensing.PUMP_OUTLET).isBypassOpen());
        }
    }

    /** phi = 1 - r_crit/r; tolerance from the override of the nearly ideal bypass valve, below 1e-3 of its setting. */
    @Test
    void deepColdBypassShareIsConstant() {
        double expected = CircuitLimits.deepColdBypassShare(1, BYPASS, RELIEF);
        for (double mu : new double[] {5, 50, 500}) {
            check("bypassed share in deep cold")
                    .at(mu + " Pa s")
                    .expected(expected, "1")
                    .computed(deepCold(1, mu, Sensing.PUMP_OUTLET).bypassShare())
                    .within(3e-3, "override of the nearly ideal valve");
        }
    }

    /** Threshold viscosity p_b/(psi_f Q0) is reached before the relief opens when the ratio is supercritical. */
    @Test
    void thresholdViscosityOpensTheBypass() {
        double filter = 6e9;
        double flow = ClosedForms.shutFlow(PUMP, 20, filter, GALLERY);
        double threshold = ClosedForms.thresholdViscosity(BYPASS, filter, flow);
        assertTrue(threshold < CircuitLimits.reliefViscosity(RELIEF, filter, GALLERY, flow));
        for (double side : new double[] {0.999, 1.001}) {
            double mu = threshold * side;
            OperatingPoint point = converged(ring(
                    FilterAssembly.ofPack(filter).withBypass(BypassLocation.BASE, NEARLY_IDEAL),
                    GALLERY,
                    mu,
                    Relief.ideal(Sensing.PUMP_OUTLET, RELIEF)));
            assertEquals(
                    side > 1,
                    filter(filter).solve(point.filterFlow(), new Fluid(mu, 0)).isBypassOpen());
        }
    }

    /** Pump without slip, override 5e8 Pa s/m3: 535.24 and 561.72 kPa at 1 and 100 Pa s, limit p_r + m D n = 562.0. */
    @Test
    void overrideRaisesTheCeiling() {
        Pump tight = Pump.unlimited(7.2e-6, 0);
        double[] expected = {535.24e3, 561.72e3};
        double[] viscosity = {1, 100};
        for (int i = 0; i < 2; i++) {
            OperatingPoint point = converged(new EngineCircuit(
                    tight,
                    List.of(Relief.linear(Sensing.PUMP_OUTLET, RELIEF, 5e8)),
                    FilterAssembly.ofPack(FILTER).law(),
                    Gallery.laminar(GALLERY),
                    new OneViscosity(viscosity[i], 0)));
            check("pump pressure under an override")
                    .at(viscosity[i] + " Pa s")
                    .expected(expected[i], "Pa")
                    .computed(point.pumpPressure())
                    .withinRelative(1e-4, "five digits");
        }
        check("limit of the pump pressure under an override")
                .expected(562.0e3, "Pa")
                .computed(CircuitLimits.deepColdOverridePressure(RELIEF, 5e8, 7.2e-6 * 20))
                .within(1, "last digit");
    }

    /** Gallery sensing, 490 kPa: pump 612.5, filter r p_set = 122.5 kPa; with psi_f 6e9 a share of 0.5728 is bypassed. */
    @Test
    void gallerySensingReliefLetsTheFilterDropGrow() {
        for (double mu : new double[] {1, 3}) {
            OperatingPoint point = converged(ring(filter(FILTER), GALLERY, mu, Relief.ideal(Sensing.GALLERY, RELIEF)));
            check("pump pressure, relief sensing the gallery")
                    .at(mu + " Pa s")
                    .expected(612.5e3, "Pa")
                    .computed(point.pumpPressure())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
            check("filter drop, relief sensing the gallery")
                    .at(mu + " Pa s")
                    .expected(ClosedForms.gallerySensingDrop(0.25, RELIEF), "Pa")
                    .computed(point.filterDrop())
                    .within(1e-9 * 122.5e3, "exact; the solver stops near rounding");
        }
        check("bypassed share, relief sensing the gallery, closed form")
                .expected(0.5728, "1")
                .computed(CircuitLimits.gallerySensingBypassShare(0.75, BYPASS, RELIEF))
                .within(5e-5, "half the last digit");
        check("bypassed share, relief sensing the gallery, by the solver")
                .expected(0.5728, "1")
                .computed(deepCold(0.75, 3, Sensing.GALLERY).bypassShare())
                .within(3e-3, "override of the nearly ideal valve");
    }

    /** Saturated relief of laminar resistance psi_v: the filter drop grows with viscosity again. */
    @Test
    void saturatedReliefActsAsAFixedLeak() {
        double psiV = 3e9;
        Relief stuck = Relief.valve(
                Sensing.PUMP_OUTLET,
                RELIEF,
                (opening, driving, oil) -> new PilotedLaw.Piloted(
                        driving / (oil.dynamicViscosity() * psiV), 0, 1 / (oil.dynamicViscosity() * psiV)));
        for (double mu : new double[] {1, 10}) {
            OperatingPoint point = converged(ring(FilterAssembly.ofPack(FILTER), GALLERY, mu, stuck));
            double total = FILTER + GALLERY;
            double expected = mu * point.pumpFlow() * FILTER * psiV / (psiV + total);
            check("filter drop with a relief at its stop")
                    .at(mu + " Pa s")
                    .expected(expected, "Pa")
                    .computed(point.filterDrop())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
        }
    }

    /**
     * A disc at its stop that senses the gallery: the pump's pressure drives the oil through it, so that of {@code D n} the
     * gallery gets {@code D n/(1 + (psi_f + psi_g)/psi_v)} in creeping flow, with {@code psi_v = 32/(pi^2 d x^2)} of the slit.
     */
    @Test
    void discThatSensesTheGalleryDumpsAtThePressureOfThePump() {
        double seat = 10e-3;
        double lift = 0.3e-3;
        Relief disc = Relief.valve(Sensing.GALLERY, 300e3, SpringValve.disc(300e3, seat, 1, lift, 0));
        double slit = 32 / (Math.PI * Math.PI * seat * lift * lift);
        Pump pump = Pump.unlimited(8e-6, 0);
        for (double mu : new double[] {3, 10}) {
            OperatingPoint point = converged(new EngineCircuit(
                    pump,
                    List.of(disc),
                    FilterAssembly.ofPack(6e9).law(),
                    Gallery.laminar(1e10),
                    new OneViscosity(mu, 0)));
            double expected = mu * 1e10 * 8e-6 * 20 / (1 + (6e9 + 1e10) / slit);
            check("gallery pressure with a disc at its stop that senses the gallery")
                    .at(mu + " Pa s")
                    .expected(expected, "Pa")
                    .computed(point.galleryPressure())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
        }
    }

    /** Two ideal valves: the gallery regulator holds warm, the safety valve at the pump takes over when cold enough. */
    @Test
    void safetyValveTakesOverFromTheGalleryRegulator() {
        Relief regulator = Relief.ideal(Sensing.GALLERY, 300e3);
        Relief safety = Relief.ideal(Sensing.PUMP_OUTLET, 800e3);
        OperatingPoint warm = converged(ring(FilterAssembly.ofPack(4e9), GALLERY, 0.5, regulator, safety));
        check("gallery pressure held by the regulator")
                .expected(300e3, "Pa")
                .computed(warm.galleryPressure())
                .within(1e-3, "exact; the solver stops near rounding");
        assertEquals(0, warm.reliefFlows().get(1));
        OperatingPoint clogged = converged(ring(FilterAssembly.ofPack(40e9), GALLERY, 0.5, regulator, safety));
        check("pump pressure held by the safety valve")
                .expected(800e3, "Pa")
                .computed(clogged.pumpPressure())
                .within(1e-3, "exact; the solver stops near rounding");
        assertEquals(0, clogged.reliefFlows().get(0));
    }

    /** Points of a workshop manual (2.5 L flat-four of 2005, 80 C, minimum): 3.2 L/min at 600 rpm and 98 kPa, 32.6 at 5000
     * rpm and 294 kPa. Displacement, leak and efficiencies derived here, four to five digits. */
    @Test
    void pumpFromTwoDeliveryPoints() {
        Pump.DeliveryPoint slow = new Pump.DeliveryPoint(10, 98e3, 3.2 * LITER_PER_MINUTE);
        Pump.DeliveryPoint fast = new Pump.DeliveryPoint(5000.0 / 60, 294e3, 32.6 * LITER_PER_MINUTE);
        Pump pump = Pump.fromDelivery(slow, fast, 0.0155);
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        "displacement from two delivery points",
                        "delivery points of a workshop manual (2.5 L flat-four of 2005); result derived here")
                .expected(7.1875e-6, "m3")
                .computed(pump.displacement())
                .withinRelative(1e-3, "four digits");
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        "leak from two delivery points",
                        "delivery points of a workshop manual (2.5 L flat-four of 2005); result derived here")
                .expected(1.8920e-10, "m3")
                .computed(pump.slip() / 0.0155)
                .withinRelative(1e-3, "four digits");
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        "volumetric efficiency at 600 rpm",
                        "delivery points of a workshop manual (2.5 L flat-four of 2005); result derived here")
                .expected(0.7420, "1")
                .computed(pump.delivery(10, 98e3, 0.0155) / (pump.displacement() * 10))
                .within(1e-3, "ten of the last digit, that of the rounded flow");
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        "volumetric efficiency at 5000 rpm",
                        "delivery points of a workshop manual (2.5 L flat-four of 2005); result derived here")
                .expected(0.9071, "1")
                .computed(pump.delivery(5000.0 / 60, 294e3, 0.0155) / (pump.displacement() * 5000 / 60))
                .within(1e-3, "ten of the last digit, that of the rounded flow");
    }

    /** Points of a 2021 workshop manual give a negative slip: a relief step is open at one of them. */
    @Test
    void pumpPointsWithAnOpenReliefAreRefused() {
        Pump.DeliveryPoint slow = new Pump.DeliveryPoint(10, 34e3, 5.8 * LITER_PER_MINUTE);
        Pump.DeliveryPoint fast = new Pump.DeliveryPoint(100, 298e3, 46.6 * LITER_PER_MINUTE);
        assertThrows(IllegalArgumentException.class, () -> Pump.fromDelivery(slow, fast, 0.01));
    }

    /** Narrow-gap flow, exact; the DIN 31652 / ISO 7902 form (remembered) is the same by algebra. Five digits. */
    @Test
    void groovedBearingFlowAndSideFlow() {
        GroovedBearing bearing = new GroovedBearing(60e-3, 30e-6, 8e-3, 0.6);
        double flow = bearing.conductance() * 300e3 / 0.01;
        check("flow of a grooved bearing")
                .expected(0.29391, "L/min")
                .computed(flow / LITER_PER_MINUTE)
                .withinRelative(1e-4, "five digits");
        double relativeClearance = 2 * 30e-6 / 60e-3;
        double asStandard = Math.pow(60e-3, 3)
                * Math.pow(relativeClearance, 3)
                * Math.PI
                / 24
                * (1 + 1.5 * 0.36)
                * 60e-3
                / 16e-3
                * 300e3
                / 0.01;
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        "flow of a grooved bearing in the form of the standard",
                        "DIN 31652, ISO 7902, form from memory")
                .expected(asStandard, "m3/s")
                .computed(flow)
                .within(1e-12 * flow, "arithmetic");
        double side = new GroovedBearing(60e-3, 30e-6, 8e-3, 0.7).sideFlow(20e-3) * 2000 / 60;
        check("side flow of a grooved bearing")
                .expected(0.15834, "L/min")
                .computed(side / LITER_PER_MINUTE)
                .withinRelative(1e-4, "five digits");
    }

    /** dp/(rho cp), four digits. */
    @Test
    void adiabaticRise() {
        check("adiabatic rise of oil across 157 kPa")
                .expected(0.09498, "K")
                .computed(CircuitLimits.adiabaticRise(157e3, 870, 1900))
                .withinRelative(1e-3, "four digits");
    }

    private static FilterState deepCold(double ratio, double mu, Sensing sensing) {
        FilterAssembly filter = filter(ratio * GALLERY);
        OperatingPoint point = converged(ring(filter, GALLERY, mu, Relief.ideal(sensing, RELIEF)));
        return filter.solve(point.filterFlow(), new Fluid(mu, 0));
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CIRCUIT, quantity, SOURCE);
    }
}
