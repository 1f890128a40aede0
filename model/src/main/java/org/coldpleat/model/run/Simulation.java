package org.coldpleat.model.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.EvidenceWriter;
import org.coldpleat.model.certainty.measurement.PlanWriter;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explainer;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.loading.multipass.MultiPassWriter;
import org.coldpleat.model.loading.service.DutyCycle;
import org.coldpleat.model.loading.service.Loading;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.CaseResolver;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Duty;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsWriter;
import org.coldpleat.model.steady.Glance;
import org.coldpleat.model.steady.GlanceWriter;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.MapWriter;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.PointWriter;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.steady.TrialWriter;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.ComparisonWriter;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceWriter;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.model.verdict.start.Starter;
import org.coldpleat.shared.casefile.CaseDocument;

/** The single entry for all runs: the command line and the window call nothing else. */
public final class Simulation {
    private Simulation() {}

    /** Turns a document into computing form, or says what stands in the way. */
    public static Resolution resolve(CaseDocument document) {
        return CaseResolver.resolve(document, Optional.empty());
    }

    /**
     * The same for a document that was changed in few places. What comes of it is the same to the last digit.
     *
     * @param before the case before the change, of which every part is taken that says the same
     */
    public static Resolution resolveAfter(ResolvedCase before, CaseDocument document) {
        return CaseResolver.resolve(document, Optional.of(before));
    }

    /** Compares all candidates in all states. */
    public static Comparison compare(ResolvedCase resolved) {
        return compare(resolved, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the comparison, or nothing if cancelled
     */
    public static Optional<Comparison> compare(ResolvedCase resolved, Progress progress) {
        return ComparisonWriter.write(resolved, progress);
    }

    /**
     * All candidates in one state without bands, quick enough to follow a value that is being changed.
     *
     * @param state name of a state of the case
     * @throws IllegalArgumentException if the case has no such state
     */
    public static Glance glance(ResolvedCase resolved, String state) {
        return GlanceWriter.write(resolved, duty(resolved, state));
    }

    /**
     * One candidate in one state without bands, clean or with dirt.
     *
     * @throws IllegalArgumentException if the case has no such candidate or state
     */
    public static Trial trial(ResolvedCase resolved, Trial.Request request) {
        return TrialWriter.write(
                resolved, resolved.requirePosition(request.candidate()), duty(resolved, request.state()), request);
    }

    /**
     * How one candidate loads with dirt in the service of the case, best values.
     *
     * @param horizon running time up to which to know it [s], above 0
     * @return empty if the case or the sheet says too little for a service
     * @throws IllegalArgumentException if the case has no such candidate
     */
    public static Optional<Loading> loading(ResolvedCase resolved, String candidate, double horizon) {
        return Loading.of(resolved, resolved.requirePosition(candidate), horizon);
    }

    /**
     * One operating point of a candidate in a state.
     *
     * @param candidate name of a candidate of the case
     * @param state name of a state of the case
     * @param temperature oil temperature [K], within -40 to 150 degrees C
     * @throws IllegalArgumentException if the case has no such candidate or state
     */
    public static PointResult point(ResolvedCase resolved, String candidate, String state, double temperature) {
        return PointWriter.inState(resolved, resolved.requirePosition(candidate), duty(resolved, state), temperature);
    }

    /**
     * One operating point of a candidate on a flow stand.
     *
     * @param candidate name of a candidate of the case
     * @param flow [m3/s], at least 0
     * @param temperature oil temperature [K], within -40 to 150 degrees C
     * @throws IllegalArgumentException if the case has no such candidate
     */
    public static PointResult pointAtFlow(ResolvedCase resolved, String candidate, double flow, double temperature) {
        Duty duty = new Duty(Duty.FLOW_STAND, "", flow);
        return PointWriter.inState(resolved, resolved.requirePosition(candidate), duty, temperature);
    }

    /**
     * Bypass share of a candidate over oil temperature and engine speed, or flow where the case has no engine.
     *
     * @param candidate name of a candidate of the case
     * @throws IllegalArgumentException if the case has no such candidate
     */
    public static MapResult map(ResolvedCase resolved, String candidate) {
        return map(resolved, candidate, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the map, or nothing if cancelled
     */
    public static Optional<MapResult> map(ResolvedCase resolved, String candidate, Progress progress) {
        return MapWriter.map(resolved, resolved.requirePosition(candidate), progress);
    }

    /** True if the case says how the engine is started, so that {@link #coldStart} can be asked for. */
    public static boolean hasStart(ResolvedCase resolved) {
        return StartPlan.isStated(resolved);
    }

    /** Names of the schedules of a case; none without a start. */
    public static List<String> schedules(ResolvedCase resolved) {
        return resolved.document().root().section("start").stream()
                .flatMap(start -> start.sections("schedules").stream())
                .map(schedule -> schedule.text("name").orElse(""))
                .toList();
    }

    /** What the start of a case can be asked; empty if it has none. */
    public static Optional<StartOutline> startOutline(ResolvedCase resolved) {
        return hasStart(resolved)
                ? Optional.of(new StartPlan(resolved, ColdStartRequest.AS_STATED).outline())
                : Optional.empty();
    }

    /**
     * A cold start in time.
     *
     * @throws IllegalArgumentException if the case has no start, candidate, schedule or state of that name, or it would
     *     begin hot
     */
    public static ColdStart coldStart(ResolvedCase resolved, ColdStartRequest request) {
        return coldStart(resolved, request, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the start, or nothing if cancelled
     */
    public static Optional<ColdStart> coldStart(ResolvedCase resolved, ColdStartRequest request, Progress progress) {
        return new Starter(resolved, request).run(progress);
    }

    /**
     * The same start from the coldest temperature of the case upward, everything soaked through.
     *
     * @throws IllegalArgumentException as {@link #coldStart}, or if the case has a logged oil temperature
     */
    public static ColdStartSweep coldStartSweep(ResolvedCase resolved, ColdStartRequest request) {
        return new Starter(resolved, request).sweep(false, Progress.NONE).orElseThrow();
    }

    /**
     * The same with bands, from fewer temperatures.
     *
     * @param progress told of the advance; may cancel
     * @return the sweep, or nothing if cancelled
     */
    public static Optional<ColdStartSweep> bandedColdStartSweep(
            ResolvedCase resolved, ColdStartRequest request, Progress progress) {
        return new Starter(resolved, request).sweep(true, progress);
    }

    /**
     * Each candidate with its bypass valve set to one opening pressure after another: opening temperatures, what the stated
     * start brings, and what the medium must bear.
     *
     * @param candidate one candidate; all of them if empty
     * @param from lowest setting [Pa], above 0
     * @param to highest setting [Pa], above from
     * @throws IllegalArgumentException if the case has no such candidate, or the settings do not rise
     */
    public static SettingsResult settings(ResolvedCase resolved, Optional<String> candidate, double from, double to) {
        return settings(resolved, candidate, from, to, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the comparison, or nothing if cancelled
     */
    public static Optional<SettingsResult> settings(
            ResolvedCase resolved, Optional<String> candidate, double from, double to, Progress progress) {
        if (!(from > 0 && to > from)) {
            throw new IllegalArgumentException("from must be above 0 Pa and below to, was " + from + " to " + to);
        }
        return SettingsWriter.write(resolved, candidate, from, to, progress);
    }

    /**
     * The chain behind a number of a candidate.
     *
     * @throws IllegalArgumentException if the case has no such candidate or state, if there is no such quantity, or if a
     *     temperature is given for one that belongs to none
     */
    public static Explanation explain(ResolvedCase resolved, ExplainRequest request) {
        Duty duty = request.state()
                .map(name -> duty(resolved, name))
                .orElseGet(() -> resolved.duties().get(0));
        return Explainer.explain(resolved, duty, request);
    }

    /** Names of the numbers that can be explained. */
    public static List<String> explainableQuantities() {
        return Explainer.QUANTITIES;
    }

    /** Those of them that belong to one oil temperature. */
    public static List<String> explainableAtTemperature() {
        return Explainer.AT_TEMPERATURE;
    }

    /** True if the case says what its filters go through in service. */
    public static boolean hasService(ResolvedCase resolved) {
        return resolved.document().root().section("duty").isPresent();
    }

    /**
     * Service life of all candidates.
     *
     * @param horizon running time to look at [s], above 0; that of the case if empty
     * @throws IllegalArgumentException if the case has no duty
     */
    public static ServiceResult service(ResolvedCase resolved, OptionalDouble horizon) {
        return service(resolved, horizon, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the result, or nothing if cancelled
     */
    public static Optional<ServiceResult> service(ResolvedCase resolved, OptionalDouble horizon, Progress progress) {
        DutyCycle cycle = DutyCycle.of(resolved)
                .orElseThrow(() -> new IllegalArgumentException("the case must have a duty, had none"));
        return ServiceWriter.write(
                resolved, horizon.isPresent() ? cycle.withHorizon(horizon.getAsDouble()) : cycle, progress);
    }

    /** True if the sheet of a candidate says what a virtual multi-pass test needs: a capacity or family, and a rating. */
    public static boolean hasMultiPass(ResolvedCase resolved, String candidate) {
        return MultiPassWriter.isPossible(resolved, resolved.requirePosition(candidate));
    }

    /**
     * A virtual multi-pass test.
     *
     * @param candidate name of a candidate of the case
     * @param leakShare share of the flow that leaks past the clean element [0..1, below 1]; grows with the pressure drop
     * @throws IllegalArgumentException if there is no such candidate or its sheet says too little
     */
    public static MultiPassReport multiPass(ResolvedCase resolved, String candidate, double leakShare) {
        return MultiPassWriter.run(
                resolved, resolved.requirePosition(candidate), new Leak(leakShare, Leak.Kind.LAMINAR_GAP));
    }

    /**
     * What is known of a candidate, and from which tests and statements.
     *
     * @param candidate name of a candidate of the case
     * @throws IllegalArgumentException if the case has no such candidate
     */
    public static EvidenceReport evidence(ResolvedCase resolved, String candidate) {
        return EvidenceWriter.report(resolved, resolved.requirePosition(candidate));
    }

    /** Tests that can be planned. */
    public static List<String> plannableTests() {
        return PlanWriter.TESTS;
    }

    /**
     * What a home or bench test would show and be worth.
     *
     * @param candidate name of a candidate of the case
     * @param test key of the test
     * @param resolution scale step of the reading [SI]; a common one if empty
     * @throws IllegalArgumentException if there is no such candidate or test, or the sheet says too little for it
     */
    public static TestPlan plan(ResolvedCase resolved, String candidate, String test, OptionalDouble resolution) {
        return PlanWriter.plan(resolved, resolved.requirePosition(candidate), test, resolution);
    }

    private static Duty duty(ResolvedCase resolved, String state) {
        return resolved.duty(state)
                .orElseThrow(() -> new IllegalArgumentException("no state " + state + " in " + resolved.stateNames()));
    }
}
