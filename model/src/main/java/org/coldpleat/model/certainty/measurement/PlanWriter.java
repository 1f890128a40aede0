package org.coldpleat.model.certainty.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.bench.Air;
import org.coldpleat.model.bench.AirTest;
import org.coldpleat.model.bench.BubblePoint;
import org.coldpleat.model.bench.DrainTest;
import org.coldpleat.model.bench.FiberSizing;
import org.coldpleat.model.bench.FlowBench;
import org.coldpleat.model.bench.Plan;
import org.coldpleat.model.bench.ScaleTest;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.evidence.AirTestEvidence;
import org.coldpleat.model.evidence.PoreEvidence;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.medium.AirViscosity;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Plans a home or bench test from what is known of a candidate so far. */
@Source("all conditions planned with: common practice, no source")
public final class PlanWriter {
    public static final List<String> TESTS =
            List.of("flowBench", "drainTest", "airTest", "scaleTest", "bubblePoint", "fiberSizing");

    /** Oil warm from a water bath [K]. */
    private static final double WARM = 333.15;

    private static final double ROOM = 293.15;
    private static final double ATMOSPHERE = 101325;

    /** Share of the lowest opening pressure that the highest reading of a flow bench should stay below [1]. */
    private static final double BELOW_OPENING = 0.6;

    private static final double LARGEST_FLOW = 12 / 6e4;
    private static final double WITHOUT_VALVE = 50e3;
    private static final double VESSEL = 0.084;
    private static final double FIRST_HEAD = 0.6;
    private static final double LAST_HEAD = 0.25;
    private static final double DISK = 0.05;
    private static final double AIR_PRESSURE = 200;
    private static final double COMMON_SEAT = 0.0145;
    private static final double DEPTH = 0.01;
    private static final double LARGEST_TO_MEAN = 2.1;
    private static final int FIBERS = 40;
    private static final double FIBER_SPREAD = 0.4;

    private final ResolvedCase resolved;
    private final int position;
    private final BuiltCandidate candidate;
    private final Section sheet;
    private final OptionalDouble resolution;
    private final List<TestPlan.Condition> conditions = new ArrayList<>();

    private PlanWriter(ResolvedCase resolved, int position, OptionalDouble resolution) {
        this.resolved = resolved;
        this.position = position;
        this.resolution = resolution;
        candidate = resolved.candidates().get(position);
        sheet = resolved.sheet(position);
    }

    public static TestPlan plan(ResolvedCase resolved, int position, String test, OptionalDouble resolution) {
        PlanWriter writer = new PlanWriter(resolved, position, resolution);
        return switch (test) {
            case "flowBench" -> writer.flowBench();
            case "drainTest" -> writer.drainTest();
            case "airTest" -> writer.airTest();
            case "scaleTest" -> writer.scaleTest();
            case "bubblePoint" -> writer.bubblePoint();
            case "fiberSizing" -> writer.fiberSizing();
            default -> throw new IllegalArgumentException("test must be one of " + TESTS + ", was " + test);
        };
    }

    private TestPlan flowBench() {
        Fluid oil = warmOil();
        double laminar = whole(oil, LARGEST_FLOW / 2);
        double highest = candidate.filter().elementValve().isPresent()
                ? BELOW_OPENING * candidate.filter().elementValve().get().openingPressure()
                : WITHOUT_VALVE;
        double flow = Math.min(LARGEST_FLOW, highest / (oil.dynamicViscosity() * laminar));
        condition("temperature", Kind.TEMPERATURE, WARM);
        condition("largestFlow", Kind.FLOW_RATE, flow);
        condition("rows", Kind.COUNT, 8);
        double step = resolution.orElse(250);
        // flow 2 % and 1 K, as rectangles, and the oil
        double other = Math.sqrt(
                Math.pow(0.02 / Math.sqrt(3), 2) + Math.pow(oneKelvin() / Math.sqrt(3), 2) + Math.pow(viscosity(), 2));
        return result(
                "flowBench",
                "pack",
                packLnSigma(),
                step,
                FlowBench.plan(laminar, flow, oil, 8, 60, step, other, packLnSigma()));
    }

    private TestPlan drainTest() {
        Fluid oil = warmOil();
        double laminar = whole(oil, LARGEST_FLOW / 20);
        condition("temperature", Kind.TEMPERATURE, WARM);
        condition("vesselDiameter", Kind.LENGTH, VESSEL);
        condition("firstHead", Kind.LENGTH, FIRST_HEAD);
        condition("lastHead", Kind.LENGTH, LAST_HEAD);
        double area = Math.PI * VESSEL * VESSEL / 4;
        Measured vessel =
                Measured.exact(Kind.AREA, area, Provenance.MEASURED).withSpread(area * 0.02, Spread.RECTANGULAR);
        double step = resolution.orElse(0.002);
        DrainTest.Rig rig = new DrainTest.Rig(vessel, AdditiveLaw.NONE, step, 0.001, 0.6, viscosity(), 0);
        return result(
                "drainTest",
                "pack",
                packLnSigma(),
                step,
                DrainTest.plan(
                        laminar,
                        FIRST_HEAD,
                        LAST_HEAD,
                        WARM,
                        rig,
                        resolved.shared().oil()::at,
                        step,
                        packLnSigma()));
    }

    private TestPlan airTest() {
        condition("diskDiameter", Kind.LENGTH, DISK);
        condition("pressure", Kind.PRESSURE_DIFFERENCE, AIR_PRESSURE);
        double step = resolution.orElse(1 / 6e4);
        double present = candidate.evidence().lnSigma();
        // pressure, area, leak and slip 3 % together, and the way from air to oil
        double other = Math.hypot(0.03, AirTestEvidence.TRANSFER_LN_SIGMA);
        return result(
                "airTest",
                "mediumResistance",
                present,
                step,
                AirTest.plan(
                        candidate.mediumResistance(),
                        Math.PI * DISK * DISK / 4,
                        AIR_PRESSURE,
                        Air.at(ROOM, ATMOSPHERE, AirViscosity::at),
                        step,
                        30,
                        other,
                        present));
    }

    private TestPlan scaleTest() {
        double opening = candidate
                .filter()
                .elementValve()
                .map(valve -> valve.openingPressure())
                .orElseThrow(() -> new IllegalArgumentException("scaleTest needs a valve inside the filter, had none"));
        double seat = sheet.section("bypass")
                .flatMap(valve -> valve.quantity("seatDiameter"))
                .map(Measured::value)
                .orElse(COMMON_SEAT);
        condition("seatDiameter", Kind.LENGTH, seat);
        condition("pushes", Kind.COUNT, 3);
        double step = resolution.orElse(0.005);
        // seat line 0.3 mm, lift-off 3 %, as rectangles
        double other = Math.hypot(2 * 0.0003 / seat, 0.03) / Math.sqrt(3);
        double present = Optional.ofNullable(
                        resolved.ownUnknowns(position).get(sheet.path() + ".bypass.openingPressure"))
                .map(unknown ->
                        unknown.value().standardUncertainty() / unknown.value().value())
                .orElse(0.0);
        return result(
                "scaleTest", "openingPressure", present, step, ScaleTest.plan(opening, seat, 1, step, other, present));
    }

    private TestPlan bubblePoint() {
        double thickness = candidate.thickness().orElseThrow(this::noStructure);
        double solidity = candidate.solidity().orElseThrow(this::noStructure);
        double mean = Math.sqrt(32 * thickness / (candidate.mediumResistance() * (1 - solidity)));
        condition("depth", Kind.LENGTH, DEPTH);
        condition("spots", Kind.COUNT, 3);
        double step = resolution.orElse(10);
        // the hole is known now only through the medium and the pore model
        double present = Math.hypot(candidate.evidence().lnSigma(), PoreEvidence.BUNDLE_LN_SIGMA) / 2;
        BubblePoint.Liquid liquid =
                new BubblePoint.Liquid(Measured.exact(Kind.SURFACE_TENSION, 0.0217, Provenance.PUBLISHED), 785, 0);
        return result(
                "bubblePoint",
                "largestHole",
                present,
                step,
                BubblePoint.plan(LARGEST_TO_MEAN * mean, DEPTH, liquid, step, 0.03, present));
    }

    private IllegalArgumentException noStructure() {
        return new IllegalArgumentException("bubblePoint needs thickness and basis weight of the sheet, had none");
    }

    private TestPlan fiberSizing() {
        Optional<Measured> read = sheet.section("medium").flatMap(medium -> medium.quantity("fiberDiameter"));
        double diameter = read.map(Measured::value).orElse(15e-6);
        double present = read.map(value -> Math.max(0.1, value.standardUncertainty() / value.value()))
                .orElse(0.5);
        condition("fibers", Kind.COUNT, FIBERS);
        double step = resolution.orElse(1e-6);
        return result(
                "fiberSizing",
                "fiberDiameter",
                present,
                step,
                FiberSizing.plan(diameter, FIBER_SPREAD, FIBERS, step, present));
    }

    private void condition(String key, Kind kind, double value) {
        conditions.add(new TestPlan.Condition(key, Measured.exact(kind, value, Provenance.TYPICAL)));
    }

    private Fluid warmOil() {
        return resolved.shared().oil().at(WARM);
    }

    private double viscosity() {
        return resolved.shared().oil().oil().viscositySpread(WARM);
    }

    private double oneKelvin() {
        return Math.abs(Math.log(resolved.shared().oil().at(WARM - 0.5).dynamicViscosity()
                / resolved.shared().oil().at(WARM + 0.5).dynamicViscosity()));
    }

    /** Laminar resistance of the whole filter at a flow [1/m3]. */
    private double whole(Fluid oil, double flow) {
        return candidate.filter().withoutBypass().solve(flow, oil).totalDrop() / (oil.dynamicViscosity() * flow);
    }

    /** How well the pack is known now [1]. */
    private double packLnSigma() {
        return Variants.norm(new Variants(resolved)
                .ownContributions(position, one -> Math.log(one.pack().resistance())));
    }

    private TestPlan result(String test, String target, double present, double step, Plan plan) {
        return new TestPlan(
                candidate.name(),
                test,
                conditions,
                target,
                present,
                plan.reading(),
                plan.expected(),
                plan.duration(),
                step,
                plan.lnSigma(),
                plan.resolutionNeeded(),
                plan.cautions());
    }
}
