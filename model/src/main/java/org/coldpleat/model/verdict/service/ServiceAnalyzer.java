package org.coldpleat.model.verdict.service;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.Iso4406;
import org.coldpleat.model.loading.LoadingFactor;
import org.coldpleat.model.loading.service.DutyCycle;
import org.coldpleat.model.loading.service.ServiceCourse;
import org.coldpleat.model.loading.service.ServiceLife;
import org.coldpleat.model.loading.service.ServiceModel;
import org.coldpleat.model.loading.service.ServicePlan;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.OpeningFinder;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.steady.StateSolver;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.source.Source;

/** Service life of one candidate with bands. */
public final class ServiceAnalyzer {
    /** Moments shown [1]. */
    private static final int MOMENTS = 24;

    /** Most oil changes that are shown one by one [1]. */
    private static final int MOST_OIL_CHANGES = 40;

    private final ResolvedCase resolved;
    private final Variants variants;
    private final int position;
    private final DutyCycle cycle;
    private final BuiltCandidate candidate;
    private final ServiceModel model;
    private final List<Notice> notices = new ArrayList<>();
    private Optional<BlockingLaw> law = Optional.empty();

    public ServiceAnalyzer(ResolvedCase resolved, Variants variants, int position, DutyCycle cycle) {
        this.resolved = resolved;
        this.variants = variants;
        this.position = position;
        this.cycle = cycle;
        candidate = resolved.candidates().get(position);
        model = new ServiceModel(resolved, position, cycle);
    }

    List<Notice> notices() {
        return List.copyOf(notices);
    }

    public Optional<BlockingLaw> law() {
        return law;
    }

    public ServiceResult.Candidate analyze() {
        var sheet = resolved.sheet(position);
        Optional<CapacityBuilder.Blocking> blocking = CapacityBuilder.blocking(sheet, resolved.measured(position));
        OptionalDouble hotRatio = model.openingRatio(cycle.running(), cycle.oilTemperature());
        OptionalDouble coldRatio = cycle.starts()
                .map(one -> model.openingRatio(one.operatingState(), one.winterStart()))
                .orElse(OptionalDouble.empty());
        if (blocking.isEmpty()) {
            return notComputed(hotRatio, coldRatio);
        }
        CapacityBuilder.Capture capture = CapacityBuilder.capture(sheet);
        notices.addAll(blocking.get().notices());
        notices.addAll(capture.notices(candidate.name(), cycle.sizes().finest()));
        BlockingLaw middle = blocking.get().law();
        law = Optional.of(middle);
        double sigma = Math.hypot(
                Math.hypot(blocking.get().lnSigma(), cycle.dirtLnSigma()), captureLnSigma(capture, middle, hotRatio));
        ServicePlan plan = model.plan(middle, capture.estimate().likely(), hotRatio);
        double[] stops =
                DoubleStream.concat(hotRatio.stream(), coldRatio.stream()).toArray();
        ServiceCourse course = ServiceLife.run(plan, stops);
        ServiceCourse slow = ServiceLife.run(plan.withLaw(scaled(middle, -COVERAGE_95 * sigma)));
        ServiceCourse fast = ServiceLife.run(plan.withLaw(scaled(middle, COVERAGE_95 * sigma)));
        List<ServiceResult.Moment> moments = moments(course, slow, fast, stops);
        double error = model.starts()
                .map(one -> one.statedError(course.last().packRatio()))
                .orElse(0.0);
        model.starts()
                .filter(one -> one.unsolved() > 0)
                .ifPresent(one -> notices.add(Notice.of(
                        "service.startsUnsolved",
                        Severity.WARNING,
                        candidate.name(),
                        Integer.toString(one.unsolved()))));
        notices.addAll(course.load().notices(middle, candidate.name()));
        if (course.status() == ServiceCourse.Status.ELEMENT_LIMIT) {
            notices.add(Notice.of(
                    "service.elementLimit",
                    Severity.CAUTION,
                    candidate.name(),
                    Amount.hours(course.last().time()),
                    Amount.ratio(ServiceLife.ELEMENT_LIMIT)));
        }
        boolean valve = model.loaded(cycle.running(), 1).hasValve();
        return new ServiceResult.Candidate(
                candidate.name(),
                course.status() == ServiceCourse.Status.HORIZON
                        ? ServiceResult.Status.HORIZON
                        : ServiceResult.Status.ELEMENT_LIMIT,
                moments,
                valve
                        ? Optional.of(event(course, hotRatio, cycle.running(), cycle.oilTemperature(), sigma))
                        : Optional.empty(),
                valve
                        ? cycle.starts()
                                .map(one -> event(course, coldRatio, one.operatingState(), one.winterStart(), sigma))
                        : Optional.empty(),
                new ServiceResult.Factor(hotRatio, closedHot()),
                new ServiceResult.Factor(coldRatio, closedCold()),
                course.end().massClosure(),
                error);
    }

    /** Without a law of loading there are no hours; at which ratio the valve opens is known all the same. */
    private ServiceResult.Candidate notComputed(OptionalDouble hotRatio, OptionalDouble coldRatio) {
        notices.add(Notice.of("service.noCapacity", Severity.WARNING, candidate.name()));
        return new ServiceResult.Candidate(
                candidate.name(),
                ServiceResult.Status.NO_CAPACITY,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                new ServiceResult.Factor(hotRatio, closedHot()),
                new ServiceResult.Factor(coldRatio, closedCold()),
                0,
                0);
    }

    /** Standard uncertainty that typical capture brings to the logarithm of the dirt an element takes in an hour [1]. */
    private double captureLnSigma(CapacityBuilder.Capture capture, BlockingLaw middle, OptionalDouble hotRatio) {
        double[] rates = capture.ends().stream()
                .map(curve ->
                        ServiceLife.run(model.plan(middle, curve, hotRatio)).last())
                .mapToDouble(last -> last.retained() / last.time())
                .toArray();
        return rates.length == 0 ? 0 : Math.log(rates[1] / rates[0]) / (2 * COVERAGE_95);
    }

    private static BlockingLaw scaled(BlockingLaw law, double logFactor) {
        return new BlockingLaw(law.exponent(), law.coefficient() * Math.exp(logFactor));
    }

    /**
     * Time of an opening with its band: life goes with 1/(K x dirt rate), and with the ratio at which the valve opens
     * along the course.
     */
    @Source("derived here: first-order propagation in the logarithm of the life")
    private ServiceResult.Event event(
            ServiceCourse course,
            OptionalDouble ratio,
            OperatingState operatingState,
            double temperature,
            double sigma) {
        if (ratio.isEmpty()) {
            return never();
        }
        OptionalDouble time = course.timeAtRatio(ratio.getAsDouble());
        if (time.isEmpty()) {
            return never();
        }
        double best = time.getAsDouble();
        if (best == 0) {
            return new ServiceResult.Event(0, 0, 0);
        }
        double at = ratio.getAsDouble();
        double step = 0.02;
        double before = course.timeAtRatio(Math.max(1, at * Math.exp(-step))).orElse(best);
        double growth = Math.log(best / Math.max(before, best / 10)) / step;
        double slope = (Math.log(model.valveRatio(operatingState, temperature, at * Math.exp(step)))
                        - Math.log(model.valveRatio(operatingState, temperature, at * Math.exp(-step))))
                / (2 * step);
        double spread = Math.hypot(sigma, growth * valveSigma(operatingState, temperature) / slope);
        return new ServiceResult.Event(
                best, best * Math.exp(-COVERAGE_95 * spread), best * Math.exp(COVERAGE_95 * spread));
    }

    private static ServiceResult.Event never() {
        double none = Double.POSITIVE_INFINITY;
        return new ServiceResult.Event(none, none, none);
    }

    /** Standard uncertainty of the logarithm of the clean filter's valve ratio [1]. */
    private double valveSigma(OperatingState operatingState, double temperature) {
        List<Map<String, Double>> changes = variants.contributions(position, operatingState, 1, moved ->
                new double[] {Math.log(moved.heldShutSolver().ratioAt(temperature))});
        return Variants.norm(changes.get(0));
    }

    private List<ServiceResult.Moment> moments(
            ServiceCourse course, ServiceCourse slow, ServiceCourse fast, double[] stops) {
        TreeSet<Integer> shown = new TreeSet<>();
        double end = course.last().time();
        for (int i = 0; i <= MOMENTS; i++) {
            shown.add(course.indexAt(end * i / MOMENTS));
        }
        for (double stop : stops) {
            course.timeAtRatio(stop).ifPresent(time -> shown.add(course.indexAt(time)));
        }
        List<ServiceCourse.Point> points = course.points();
        if (end / cycle.oilLife() <= MOST_OIL_CHANGES) {
            for (int i = 1; i < points.size(); i++) {
                if (points.get(i).time() == points.get(i - 1).time()) {
                    shown.add(i - 1);
                    shown.add(i);
                }
            }
        }
        return shown.stream().map(i -> moment(points.get(i), slow, fast)).toList();
    }

    private ServiceResult.Moment moment(ServiceCourse.Point point, ServiceCourse slow, ServiceCourse fast) {
        double low = slow.packRatioAt(point.time());
        double high = fast.packRatioAt(point.time());
        boolean clean = point.time() == 0;
        SolvedPoint hot = model.hot(point.packRatio());
        Iso4406 code = Iso4406.ofDirt(model.classes(), point.concentration(), cycle.grainDensity());
        return new ServiceResult.Moment(
                point.time(),
                point.packRatio(),
                low,
                high,
                point.packRatio() * candidate.filter().elementResistance(),
                hot.filter().totalDrop(),
                drop(low),
                drop(high),
                hot.filter().bypassShare(),
                opening(point.packRatio()),
                opening(low),
                opening(high),
                point.retained(),
                point.dirt(),
                Math.exp(COVERAGE_95 * cycle.dirtLnSigma()),
                code.written(),
                point.unfilteredShare(),
                clean ? 0 : slow.unfilteredShareAt(point.time()),
                clean ? 0 : fast.unfilteredShareAt(point.time()),
                winterUnfiltered(point.packRatio()));
    }

    private double winterUnfiltered(double packRatio) {
        return model.starts()
                .map(one -> one.at(cycle.starts().orElseThrow().winterStart(), packRatio)
                        .unfilteredVolume())
                .orElse(Double.NaN);
    }

    private double drop(double packRatio) {
        return Double.isNaN(packRatio) ? Double.NaN : model.hotDrop(packRatio);
    }

    private double opening(double packRatio) {
        if (Double.isNaN(packRatio)) {
            return Double.NaN;
        }
        OperatingState operatingState =
                cycle.starts().map(DutyCycle.Starts::operatingState).orElse(cycle.running());
        StateModel loaded = model.loaded(operatingState, packRatio);
        if (!loaded.hasValve()) {
            return Double.NaN;
        }
        StateSolver solver = loaded.heldShutSolver();
        return new OpeningFinder(resolved.from(), resolved.to(), 8, 1, 0.01)
                .find(solver::ratioAt)
                .warmestOpen();
    }

    private OptionalDouble closedHot() {
        StateModel clean = model.loaded(cycle.running(), 1);
        if (!clean.hasValve()) {
            return OptionalDouble.empty();
        }
        double ratio = clean.heldShutSolver().ratioAt(cycle.oilTemperature());
        return OptionalDouble.of(LoadingFactor.hot(1, ratio));
    }

    private OptionalDouble closedCold() {
        Optional<EngineModel> engine = resolved.shared().engine();
        if (engine.isEmpty()
                || cycle.starts().isEmpty()
                || engine.get().reliefs().isEmpty()) {
            return OptionalDouble.empty();
        }
        StateModel clean = model.loaded(cycle.starts().get().operatingState(), 1);
        Optional<SpringValve> valve =
                clean.filter().elementValve().or(() -> clean.filter().blockValve());
        Relief relief = engine.get().reliefs().get(0);
        SolvedPoint point = clean.heldShutAt(cycle.starts().get().winterStart());
        if (valve.isEmpty() || !(point.point().galleryPressure() > 0)) {
            return OptionalDouble.empty();
        }
        double opening = valve.get().openingPressure();
        boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
        double critical =
                outlet ? ClosedForms.criticalRatio(opening, relief.setPressure()) : opening / relief.setPressure();
        double clear = point.filter().totalDrop() / point.point().galleryPressure();
        return Double.isFinite(critical)
                ? OptionalDouble.of(LoadingFactor.cold(critical, clear))
                : OptionalDouble.empty();
    }
}
