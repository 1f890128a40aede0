package org.coldpleat.model.resolve.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.bench.BenchEstimate;
import org.coldpleat.model.bench.DrainReading;
import org.coldpleat.model.bench.DrainTest;
import org.coldpleat.model.bench.FlowBench;
import org.coldpleat.model.bench.FlowRow;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.resolve.candidate.BenchEvidence;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Reads tests of the whole filter with oil: what they say of it, less the computed parts in series, is the pack. */
public final class RigReader {
    /** Relative uncertainty of a pressure difference whose gauge step is not stated, of the largest reading [1]. */
    @Source("common practice, no source")
    private static final double UNSTATED_STEP = 0.01;

    /** Uncertainties of readings that say nothing of it: temperature [K], flow [1], level [m], zero of a scale [m]. */
    @Source("common practice, no source")
    private static final double TEMPERATURE = 1;

    /** Relative scatter from row to row that a gauge step does not show [1]; sets the weights, the fit finds its size. */
    @Source("common practice, no source")
    private static final double ROW_SCATTER = 0.01;

    private static final double FLOW = 0.02;
    private static final double LEVEL = 0.001;
    private static final double ZERO = 0.002;

    /** Relative uncertainty of the computed resistance of a hose [1]. */
    @Source("common practice, no source: bore to the fourth power")
    private static final double HOSE_LN_SIGMA = 0.2;

    /** Steps of a flow bench whose size is that of the pack, since the series parts were taken off row by row. */
    private static final Set<String> ALREADY_ON_PACK = Set.of("readings", "tare", "tareAllowance");

    /** Relative uncertainty of a computed inertial loss [1]. */
    @Source("common practice, no source: discharge coefficients of punched holes")
    private static final double INERTIA = 0.3;

    private final Section tests;
    private final Inputs inputs;
    private final BenchOil oil;
    private final RigParts around;
    private final String place;

    RigReader(Section tests, Inputs inputs, BenchOil oil, RigParts around, String place) {
        this.tests = tests;
        this.inputs = inputs;
        this.oil = oil;
        this.around = around;
        this.place = place;
    }

    /** A report, and the pack if the test gave it. */
    record Reading(TestReport report, Optional<BenchEvidence.Rig> rig) {}

    Optional<Reading> flowBench(OptionalDouble valveOpens, OptionalDouble gaugeError) {
        return tests.section("flowBench").map(section -> flowBench(section, valveOpens, gaugeError));
    }

    private Reading flowBench(Section section, OptionalDouble valveOpens, OptionalDouble gaugeError) {
        List<Notice> notices = new ArrayList<>();
        List<FlowRow> all = rows(section, "rows");
        List<FlowRow> rows = all.stream()
                .filter(row -> row.pressureDifference() < valveOpens.orElse(Double.POSITIVE_INFINITY))
                .toList();
        if (rows.size() < all.size()) {
            notices.add(Notice.of(
                    "bench.rig.valveOpen",
                    Severity.WARNING,
                    place,
                    Shown.count(all.size() - rows.size()),
                    Amount.pressure(valveOpens.getAsDouble())));
        }
        if (rows.size() < 3) {
            notices.add(Notice.of("bench.rig.tooFewRows", Severity.WARNING, place));
            return refused("flowBench", rows.size(), notices);
        }
        double largest =
                rows.stream().mapToDouble(FlowRow::pressureDifference).max().orElseThrow();
        double middle = middle(rows);
        double step = section.quantity("gaugeResolution")
                .map(value -> value.value() / Math.sqrt(12))
                .orElse(UNSTATED_STEP * largest);
        double warmest =
                rows.stream().mapToDouble(FlowRow::temperature).average().orElseThrow();
        double flowAccuracy = half(section, "flowAccuracy", FLOW);
        RigParts seen = around.withFlapHeld(section.flag("flapHeld").orElse(false));
        List<RigParts.Point> points = rows.stream()
                .map(row -> new RigParts.Point(row.flowRate(), oil.at(row.temperature())))
                .toList();
        double[] series = seen.seriesDrops(points);
        List<FlowRow> pack = new ArrayList<>();
        for (int i = 0; i < series.length; i++) {
            FlowRow row = rows.get(i);
            pack.add(new FlowRow(row.pressureDifference() - series[i], row.flowRate(), row.temperature()));
        }
        FlowBench.Result result = FlowBench.evaluate(
                new FlowBench.Readings(
                        pack,
                        rows(section, "tare"),
                        inputs.folded(section, "tareShare"),
                        step,
                        ROW_SCATTER,
                        half(section, "temperatureAccuracy", TEMPERATURE),
                        oil.lnSigma(warmest),
                        section.flag("compression").orElse(false)),
                oil::at);
        notices.addAll(result.laminar().notices());
        List<TestReport.Residual> residuals = new ArrayList<>();
        double[] off = result.fit().residuals();
        for (int i = 0; result.fit().converged() && i < rows.size(); i++) {
            residuals.add(new TestReport.Residual(
                    rows.get(i).flowRate(),
                    rows.get(i).pressureDifference(),
                    off[i],
                    result.fit().outliers().contains(i)));
        }
        List<TestReport.Step> common = new ArrayList<>();
        common.add(new TestReport.Step("flowMeter", 0, flowAccuracy));
        gaugeError.ifPresent(error -> common.add(new TestReport.Step("gauges", 0, error / middle)));
        if (result.laminar().value().isPresent()) {
            inertia(result, seen.seriesInertial(points), notices);
        }
        List<TestReport.Value> extra = new ArrayList<>();
        if (result.inertial() != 0) {
            extra.add(new TestReport.Value("inertialShare", share(inertialShare(result, rows.get(rows.size() - 1)))));
        }
        if (result.compression() != 0) {
            extra.add(new TestReport.Value("growthAtLargest", share(result.compression() * largest)));
        }
        return pack(
                "flowBench",
                EvidenceKind.FLOW_BENCH,
                result.laminar(),
                seen,
                points,
                common,
                extra,
                residuals,
                notices);
    }

    private double inertialShare(FlowBench.Result result, FlowRow row) {
        double density = oil.at(row.temperature()).density();
        return density * result.inertial() * row.flowRate() * row.flowRate() / row.pressureDifference();
    }

    private static Measured share(double value) {
        return Measured.exact(Kind.FRACTION, value, Provenance.MEASURED);
    }

    /** Computed holes and bores must explain the inertial loss: what is left over came from something else. */
    private void inertia(FlowBench.Result result, double series, List<Notice> notices) {
        double allowed = 2 * Math.hypot(result.inertialUncertainty(), INERTIA * series);
        if (result.inertial() > allowed) {
            notices.add(Notice.of(
                    "bench.rig.inertiaAbove",
                    Severity.WARNING,
                    place,
                    Amount.ratio(series + result.inertial()),
                    Amount.ratio(series)));
        }
    }

    Optional<Reading> drainTest() {
        return tests.section("drainTest").map(this::drainTest);
    }

    private Reading drainTest(Section section) {
        Optional<Section> constant = section.section("constantHead");
        List<DrainReading> log = section.sections("fallingHead").stream()
                .map(row -> new DrainReading(number(row, "time"), number(row, "head"), number(row, "temperature")))
                .toList();
        double temperature = constant.map(one -> number(one, "temperature"))
                .orElseGet(() -> log.stream()
                        .mapToDouble(DrainReading::temperature)
                        .average()
                        .orElseThrow());
        DrainTest.Rig rig = new DrainTest.Rig(
                vessel(section),
                hose(section),
                half(section, "headResolution", LEVEL),
                half(section, "zeroAccuracy", ZERO),
                half(section, "temperatureAccuracy", TEMPERATURE),
                oil.lnSigma(temperature),
                HOSE_LN_SIGMA);
        BenchEstimate estimate = constant.isPresent()
                ? DrainTest.constantHead(
                        inputs.folded(constant.get(), "head").orElseThrow(),
                        inputs.folded(constant.get(), "volume").orElseThrow(),
                        inputs.folded(constant.get(), "time").orElseThrow(),
                        temperature,
                        rig,
                        oil::at)
                : DrainTest.fallingHead(log, rig, oil::at);
        List<Notice> notices = new ArrayList<>(estimate.notices());
        if (constant.isPresent()) {
            notices.add(Notice.of("bench.repeats.single", Severity.INFO, place));
        }
        double flow = constant.isPresent()
                ? number(constant.get(), "volume") / number(constant.get(), "time")
                : rig.vesselArea().value()
                        * (log.get(0).head() - log.get(log.size() - 1).head())
                        / (log.get(log.size() - 1).time() - log.get(0).time());
        if (estimate.value().isEmpty()) {
            return refused("drainTest", log.size(), notices);
        }
        RigParts seen = around.withFlapHeld(section.flag("flapHeld").orElse(false));
        List<RigParts.Point> points = List.of(new RigParts.Point(flow, oil.at(temperature)));
        return drained(estimate, seen, points, notices);
    }

    /** The whole filter was read: what it leaves when the series parts are taken off is the pack. */
    private Reading drained(BenchEstimate whole, RigParts seen, List<RigParts.Point> points, List<Notice> notices) {
        Measured read = whole.value().orElseThrow();
        double series = seen.seriesLaminar(points);
        double pack = read.value() - series;
        if (!(pack > 0)) {
            notices.add(Notice.of(
                    "bench.rig.seriesTooLarge", Severity.WARNING, place, Amount.percent(series / read.value())));
            return refused("drainTest", read.repeats(), notices);
        }
        BenchEstimate left = new BenchEstimate(
                whole.status(),
                Optional.of(new Measured(
                        read.kind(), pack, read.halfWidth(), read.spread(), read.provenance(), read.repeats(), "")),
                whole.corrections(),
                whole.conflicts(),
                whole.notices());
        return pack("drainTest", EvidenceKind.DRAIN_TEST, left, seen, points, List.of(), List.of(), List.of(), notices);
    }

    private Measured vessel(Section section) {
        Optional<Measured> area = inputs.folded(section, "vesselArea");
        Optional<Measured> diameter = inputs.folded(section, "vesselDiameter");
        return area.or(() -> diameter.map(d -> Measured.factor(
                        Kind.AREA,
                        Math.PI * d.value() * d.value() / 4,
                        2 * d.standardUncertainty() / d.value(),
                        Provenance.MEASURED)))
                .orElse(Measured.exact(Kind.AREA, 1, Provenance.MEASURED));
    }

    private static AdditiveLaw hose(Section section) {
        return section.has("hoseBore") && section.has("hoseLength")
                ? Passages.tube(number(section, "hoseBore"), number(section, "hoseLength"))
                : AdditiveLaw.NONE;
    }

    /** Reports a pack whose series parts have been taken off, with the uncertainty they leave. */
    private Reading pack(
            String test,
            EvidenceKind kind,
            BenchEstimate estimate,
            RigParts seen,
            List<RigParts.Point> points,
            List<TestReport.Step> common,
            List<TestReport.Value> extra,
            List<TestReport.Residual> residuals,
            List<Notice> notices) {
        if (estimate.value().isEmpty()) {
            return new Reading(
                    new TestReport(
                            test,
                            TestReport.REFUSED,
                            residuals.size(),
                            List.of(),
                            List.of(),
                            estimate.conflicts(),
                            residuals,
                            notices),
                    Optional.empty());
        }
        Measured read = estimate.value().get();
        double pack = read.value();
        double series = seen.seriesLaminar(points);
        // an error of the whole reading falls on the pack alone
        double gain = (pack + Math.max(0, series)) / pack;
        List<TestReport.Step> steps = new ArrayList<>();
        estimate.corrections()
                .forEach(step -> steps.add(new TestReport.Step(
                        step.name(),
                        step.relativeSize(),
                        (ALREADY_ON_PACK.contains(step.name()) && test.equals("flowBench") ? 1 : gain)
                                * step.lnSigma())));
        common.forEach(step -> steps.add(new TestReport.Step(step.name(), 0, gain * step.lnSigma())));
        steps.add(new TestReport.Step("seriesParts", -series / pack, seen.seriesUncertainty(points) / pack));
        double lnSigma = BenchReader.norm(steps);
        double geometry = seen.geometryLnSigma();
        List<TestReport.Value> values = new ArrayList<>();
        values.add(new TestReport.Value(
                "seriesParts", Measured.exact(Kind.LAMINAR_RESISTANCE, series, Provenance.MEASURED)));
        values.add(new TestReport.Value(
                "pack", Measured.factor(Kind.LAMINAR_RESISTANCE, pack, lnSigma, Provenance.MEASURED)));
        values.addAll(extra);
        steps.add(new TestReport.Step("geometry", 0, geometry));
        return new Reading(
                new TestReport(
                        test,
                        estimate.status().name(),
                        read.repeats(),
                        values,
                        steps,
                        estimate.conflicts(),
                        residuals,
                        notices),
                Optional.of(new BenchEvidence.Rig(kind, "", pack, lnSigma, geometry)));
    }

    static Reading refused(String test, int count, List<Notice> notices) {
        return new Reading(
                new TestReport(test, TestReport.REFUSED, count, List.of(), List.of(), List.of(), List.of(), notices),
                Optional.empty());
    }

    private static List<FlowRow> rows(Section section, String key) {
        return section.sections(key).stream()
                .map(row -> new FlowRow(number(row, "pressure"), number(row, "flow"), number(row, "temperature")))
                .toList();
    }

    /** Pressure difference of the middle row of a flow bench [Pa]. */
    static double middle(List<FlowRow> rows) {
        return rows.stream().mapToDouble(FlowRow::pressureDifference).sorted().toArray()[rows.size() / 2];
    }

    /** A stated error is half a rectangle; its standard uncertainty is that over root 3. */
    @Source("JCGM 100:2008 (GUM), 4.3.7")
    static double half(Section section, String key, double unstated) {
        return section.quantity(key).map(value -> value.value() / Math.sqrt(3)).orElse(unstated);
    }

    public static double number(Section section, String key) {
        return section.quantity(key).orElseThrow().value();
    }
}
