package org.coldpleat.model.resolve.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.bench.Air;
import org.coldpleat.model.bench.AirTest;
import org.coldpleat.model.bench.AntiDrainLeak;
import org.coldpleat.model.bench.BenchEstimate;
import org.coldpleat.model.bench.BubblePoint;
import org.coldpleat.model.bench.DrainTest;
import org.coldpleat.model.bench.FiberSizing;
import org.coldpleat.model.bench.GaugeCheck;
import org.coldpleat.model.bench.ScaleTest;
import org.coldpleat.model.evidence.AirTestEvidence;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.model.evidence.ResistanceEvidence;
import org.coldpleat.model.medium.AirViscosity;
import org.coldpleat.model.resolve.candidate.BenchEvidence;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Evaluates all tests of a candidate, once. */
public final class BenchReader {
    private static final double ROOM = 293.15;
    private static final double ATMOSPHERE = 101325;

    /** Uncertainties of readings that say nothing of it: manometer [Pa], air flow [1], depth [m]. */
    @Source("common practice, no source")
    private static final double MANOMETER = 5;

    private static final double AIR_FLOW = 0.05;
    private static final double DEPTH = 0.001;

    private final Section sheet;
    private final Section tests;
    private final Inputs inputs;
    private final String place;
    private final List<TestReport> reports = new ArrayList<>();
    private final List<BenchEvidence.Rig> rigs = new ArrayList<>();
    private final List<ResistanceEvidence> sheets = new ArrayList<>();

    private BenchReader(Section sheet, Section tests, Inputs inputs) {
        this.sheet = sheet;
        this.tests = tests;
        this.inputs = inputs;
        place = sheet.text("name").orElse("");
    }

    /**
     * Evaluates the tests of a sheet.
     *
     * @param around what a rig sees besides the medium
     * @param coldest temperature for which a leak is scaled [K]
     */
    public static BenchEvidence read(Section sheet, Inputs inputs, BenchOil oil, RigParts around, double coldest) {
        Section tests = sheet.section("tests").orElseThrow();
        return new BenchReader(sheet, tests, inputs).all(oil, around, coldest);
    }

    private BenchEvidence all(BenchOil oil, RigParts around, double coldest) {
        RigReader rig = new RigReader(tests, inputs, oil, around, place);
        Optional<GaugeCheck> gauges = gauges();
        OptionalDouble gaugeError = gauges.isPresent()
                ? OptionalDouble.of(gauges.get().halfWidth() / Math.sqrt(3))
                : OptionalDouble.empty();
        rig.flowBench(valveOpens(), gaugeError).ifPresent(this::take);
        rig.drainTest().ifPresent(this::take);
        airTest(around);
        Optional<ScaleTest.Result> scale = tests.section("scaleTest").flatMap(this::scaleTest);
        Optional<Measured> hole = tests.section("bubblePoint").flatMap(this::bubblePoint);
        Optional<Measured> fiber = tests.section("fiberSizing").flatMap(this::fiberSizing);
        gauges.ifPresent(this::report);
        tests.section("antiDrainLeak").ifPresent(section -> leak(section, oil, coldest));
        tests.section("usedElement")
                .ifPresent(section -> reports.add(UsedElement.report(section, inputs, oil, around, place)));
        return new BenchEvidence(rigs, sheets, hole, fiber, scale, reports);
    }

    private void take(RigReader.Reading reading) {
        reports.add(reading.report());
        reading.rig().ifPresent(rigs::add);
    }

    /** Lowest pressure difference at which the bypass valve inside the filter may open [Pa]. */
    private OptionalDouble valveOpens() {
        Optional<Section> bypass = sheet.section("bypass");
        String position = bypass.flatMap(one -> one.choice("position")).orElse("dome");
        if (position.equals("none") || position.equals("block")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(bypass.flatMap(one -> inputs.folded(one, "openingPressure"))
                .orElseGet(() -> TypicalFilter.of("bypass.openingPressure").measured())
                .low());
    }

    private void airTest(RigParts around) {
        Optional<Section> section = tests.section("airTest");
        if (section.isEmpty()) {
            return;
        }
        Section test = section.get();
        boolean element = test.choice("piece").orElse("").equals("element");
        Measured area = element
                ? Measured.exact(Kind.AREA, around.effectiveArea(), Provenance.MEASURED)
                : disk(inputs.folded(test, "diskDiameter").orElseThrow());
        double temperature = test.quantity("temperature").map(Measured::value).orElse(ROOM);
        double pressure = test.quantity("airPressure").map(Measured::value).orElse(ATMOSPHERE);
        BenchEstimate estimate = AirTest.evaluate(
                new AirTest.Readings(
                        rows(test, "rows"),
                        rows(test, "leak"),
                        area,
                        !element && test.flag("clamped").orElse(false)
                                ? test.quantity("diskDiameter").map(Measured::value)
                                : Optional.empty(),
                        sheet.section("medium")
                                .flatMap(one -> one.quantity("thickness"))
                                .map(Measured::value),
                        inputs.folded(test, "meanPore").map(BenchReader::radius),
                        test.quantity("pressureResolution")
                                .map(value -> value.value() / Math.sqrt(12))
                                .orElse(MANOMETER),
                        RigReader.half(test, "flowAccuracy", AIR_FLOW),
                        test.flag("suction").orElse(false)),
                Air.at(temperature, pressure, AirViscosity::at));
        List<TestReport.Step> steps = steps(estimate);
        steps.add(new TestReport.Step("airToOil", 0, AirTestEvidence.TRANSFER_LN_SIGMA));
        double lnSigma = norm(steps);
        List<TestReport.Value> values = new ArrayList<>();
        estimate.value().ifPresent(value -> {
            if (element) {
                double pack = value.value() / area.value();
                rigs.add(new BenchEvidence.Rig(
                        EvidenceKind.AIR_TEST, "element", pack, lnSigma, around.geometryLnSigma()));
                steps.add(new TestReport.Step("geometry", 0, around.geometryLnSigma()));
                values.add(new TestReport.Value(
                        "pack", Measured.factor(Kind.LAMINAR_RESISTANCE, pack, lnSigma, Provenance.MEASURED)));
            } else {
                Measured resistance =
                        Measured.factor(Kind.MEDIUM_RESISTANCE, value.value(), lnSigma, Provenance.MEASURED);
                sheets.add(ResistanceEvidence.of(EvidenceKind.AIR_TEST, "disk", resistance));
                values.add(new TestReport.Value("medium", resistance));
            }
        });
        add("airTest", estimate, rows(test, "rows").size(), values, steps, estimate.notices());
    }

    private static Measured disk(Measured diameter) {
        return Measured.factor(
                Kind.AREA,
                Math.PI * diameter.value() * diameter.value() / 4,
                2 * diameter.standardUncertainty() / diameter.value(),
                Provenance.MEASURED);
    }

    private static Measured radius(Measured diameter) {
        return Measured.factor(
                Kind.LENGTH,
                diameter.value() / 2,
                diameter.standardUncertainty() / diameter.value(),
                diameter.provenance());
    }

    private static List<AirTest.Row> rows(Section test, String key) {
        return test.sections(key).stream()
                .map(row -> new AirTest.Row(RigReader.number(row, "pressure"), RigReader.number(row, "flow")))
                .toList();
    }

    private Optional<ScaleTest.Result> scaleTest(Section test) {
        Optional<Measured> seat = inputs.folded(test, "seatDiameter")
                .or(() -> sheet.section("bypass").flatMap(one -> inputs.folded(one, "seatDiameter")));
        ScaleTest.Result result = ScaleTest.evaluate(new ScaleTest.Readings(
                inputs.folded(test, "liftOff").orElseThrow(),
                inputs.folded(test, "reseat"),
                inputs.folded(test, "secondLift"),
                inputs.folded(test, "lift"),
                inputs.folded(test, "lever").orElse(Measured.exact(Kind.RATIO, 1, Provenance.MEASURED)),
                weight(inputs.folded(test, "plateMass")),
                seat.orElseThrow(),
                inputs.folded(test, "plateDiameter")));
        List<TestReport.Value> values = new ArrayList<>();
        result.opening().value().ifPresent(value -> values.add(new TestReport.Value("opening", value)));
        result.closing().ifPresent(value -> values.add(new TestReport.Value("closing", value)));
        result.springRate().ifPresent(value -> values.add(new TestReport.Value("springRate", value)));
        int count = test.quantity("liftOff").map(Measured::repeats).orElse(1);
        List<Notice> notices = new ArrayList<>(result.opening().notices());
        if (count == 1) {
            notices.add(Notice.of("bench.repeats.single", Severity.INFO, place));
        }
        add("scaleTest", result.opening(), count, values, steps(result.opening()), notices);
        return result.opening().value().isPresent() ? Optional.of(result) : Optional.empty();
    }

    private static Measured weight(Optional<Measured> mass) {
        double gravity = DrainTest.headPressure(1, 1);
        return mass.map(one ->
                        Measured.between(Kind.FORCE, gravity * one.low(), gravity * one.high(), Provenance.MEASURED))
                .orElse(Measured.exact(Kind.FORCE, 0, Provenance.MEASURED));
    }

    private Optional<Measured> bubblePoint(Section test) {
        List<BubblePoint.Spot> spots = test.sections("spots").stream()
                .map(spot -> new BubblePoint.Spot(RigReader.number(spot, "pressure"), RigReader.number(spot, "depth")))
                .toList();
        BenchEstimate estimate = BubblePoint.evaluate(
                spots,
                WettingLiquid.of(test, inputs),
                test.quantity("pressureResolution")
                        .map(value -> value.value() / Math.sqrt(12))
                        .orElse(MANOMETER),
                test.quantity("depthResolution")
                        .map(value -> value.value() / Math.sqrt(12))
                        .orElse(DEPTH));
        List<TestReport.Value> values = new ArrayList<>();
        estimate.value().ifPresent(value -> values.add(new TestReport.Value("largestHole", value)));
        List<Notice> notices = new ArrayList<>(estimate.notices());
        if (estimate.value().isPresent()) {
            notices.add(Notice.of("bench.bubble.weakEvidence", Severity.INFO, place));
        }
        add("bubblePoint", estimate, spots.size(), values, steps(estimate), notices);
        return estimate.value();
    }

    private Optional<Measured> fiberSizing(Section test) {
        Optional<FiberSizing.Scale> scale =
                scale(test, "scaleBar", "scaleBarPixels").or(() -> scale(test, "fieldWidth", "fieldPixels"));
        boolean lengths = test.sections("fibers").stream().allMatch(fiber -> fiber.has("length"));
        List<FiberSizing.Mark> marks = test.sections("fibers").stream()
                .map(fiber -> new FiberSizing.Mark(
                        0, 0, RigReader.number(fiber, "width"), 0, lengths ? RigReader.number(fiber, "length") : 1))
                .toList();
        FiberSizing.Result result = FiberSizing.evaluate(
                scale,
                test.text("magnification"),
                marks,
                lengths ? FiberSizing.Weight.LENGTH : FiberSizing.Weight.NUMBER);
        List<TestReport.Value> values = new ArrayList<>();
        Optional<Measured> effective = result.mean()
                .value()
                .map(mean -> Measured.factor(Kind.LENGTH, result.effective(), mean.halfWidth(), Provenance.MEASURED));
        scale.ifPresent(one -> values.add(
                new TestReport.Value("pixel", Measured.exact(Kind.LENGTH, one.pixelSize(), Provenance.MEASURED))));
        result.mean().value().ifPresent(value -> values.add(new TestReport.Value("meanDiameter", value)));
        effective.ifPresent(value -> values.add(new TestReport.Value("surfaceMeanDiameter", value)));
        add(
                "fiberSizing",
                result.mean(),
                marks.size(),
                values,
                steps(result.mean()),
                result.mean().notices());
        return effective;
    }

    private Optional<FiberSizing.Scale> scale(Section test, String length, String pixels) {
        return test.has(length) && test.has(pixels)
                ? Optional.of(new FiberSizing.Scale(
                        inputs.folded(test, length).orElseThrow(), RigReader.number(test, pixels)))
                : Optional.empty();
    }

    private Optional<GaugeCheck> gauges() {
        return tests.section("gauges").flatMap(section -> {
            OptionalDouble difference = section.has("difference")
                    ? OptionalDouble.of(RigReader.number(section, "difference"))
                    : tests.section("flowBench")
                            .map(bench -> bench.sections("rows").stream()
                                    .mapToDouble(row -> RigReader.number(row, "pressure"))
                                    .sorted()
                                    .skip(bench.sections("rows").size() / 2)
                                    .findFirst())
                            .orElse(OptionalDouble.empty());
            return difference.isPresent() && difference.getAsDouble() > 0
                    ? Optional.of(
                            GaugeCheck.of(dial(section, "before"), dial(section, "after"), difference.getAsDouble()))
                    : Optional.empty();
        });
    }

    private static GaugeCheck.Dial dial(Section gauges, String key) {
        Section dial = gauges.section(key).orElseThrow();
        return new GaugeCheck.Dial(RigReader.number(dial, "fullScale"), RigReader.number(dial, "accuracy"));
    }

    private void report(GaugeCheck check) {
        List<TestReport.Value> values = List.of(
                new TestReport.Value(
                        "gaugeError", Measured.exact(Kind.PRESSURE_DIFFERENCE, check.halfWidth(), Provenance.MEASURED)),
                new TestReport.Value(
                        "gaugeErrorShare", Measured.exact(Kind.FRACTION, check.relative(), Provenance.MEASURED)),
                new TestReport.Value(
                        "suggestedFullScale",
                        Measured.exact(Kind.PRESSURE_DIFFERENCE, check.suggestedFullScale(), Provenance.MEASURED)));
        reports.add(new TestReport("gauges", "USABLE", 1, values, List.of(), List.of(), List.of(), check.notices()));
    }

    private void leak(Section test, BenchOil oil, double coldest) {
        double flow = RigReader.number(test, "volume") / RigReader.number(test, "time");
        double head = RigReader.number(test, "head");
        double temperature = RigReader.number(test, "temperature");
        double viscosity = oil.oil().kinematicViscosity(temperature);
        double cold =
                AntiDrainLeak.scaled(flow, head, viscosity, head, oil.oil().kinematicViscosity(coldest));
        List<TestReport.Value> values = List.of(
                new TestReport.Value("leak", Measured.exact(Kind.FLOW_RATE, flow, Provenance.MEASURED)),
                new TestReport.Value(
                        "headPressure",
                        Measured.exact(
                                Kind.PRESSURE_DIFFERENCE,
                                DrainTest.headPressure(head, oil.at(temperature).density()),
                                Provenance.MEASURED)),
                new TestReport.Value("coldLeak", Measured.exact(Kind.FLOW_RATE, cold, Provenance.MEASURED)));
        List<Notice> notices = new ArrayList<>(AntiDrainLeak.judge(flow, head, viscosity));
        notices.add(Notice.of("bench.repeats.single", Severity.INFO, place));
        reports.add(new TestReport("antiDrainLeak", "USABLE", 1, values, List.of(), List.of(), List.of(), notices));
    }

    private static List<TestReport.Step> steps(BenchEstimate estimate) {
        List<TestReport.Step> steps = new ArrayList<>();
        estimate.corrections()
                .forEach(step -> steps.add(new TestReport.Step(step.name(), step.relativeSize(), step.lnSigma())));
        return steps;
    }

    private void add(
            String test,
            BenchEstimate estimate,
            int count,
            List<TestReport.Value> values,
            List<TestReport.Step> steps,
            List<Notice> notices) {
        reports.add(new TestReport(
                test, estimate.status().name(), count, values, steps, estimate.conflicts(), List.of(), notices));
    }

    static double norm(List<TestReport.Step> steps) {
        double square = 0;
        for (TestReport.Step step : steps) {
            square += step.lnSigma() * step.lnSigma();
        }
        return Math.sqrt(square);
    }
}
