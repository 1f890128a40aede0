package org.coldpleat.model.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.CaseConfidence;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.EngineProfile;
import org.coldpleat.model.certainty.EngineProfiler;
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
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.resolve.CaseResolver;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.sizing.CaseSizing;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsWriter;
import org.coldpleat.model.sizing.SizingRequest;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.MapWriter;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.PointWriter;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.steady.QuickCurvesWriter;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.steady.TrialWriter;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.ComparisonWriter;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceWriter;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.model.verdict.start.ColdStartWriter;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.notice.Notice;

/**
 * The questions that can be put to a case, each a run that waits to be worked out; one that a case cannot be asked is
 * empty. A name that the case does not have, or a value out of range, throws IllegalArgumentException at once.
 */
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

    /** All candidates in all states, with bands. */
    public static Run<Comparison> compare(ResolvedCase resolved) {
        return progress -> ComparisonWriter.write(resolved, progress);
    }

    /**
     * All candidates in one state without bands, quick enough to follow a value that is being changed.
     *
     * @param state name of a state of the case
     */
    public static Run<QuickCurves> quickCurves(ResolvedCase resolved, String state) {
        OperatingState operatingState = operatingState(resolved, state);
        return progress -> Optional.of(QuickCurvesWriter.write(resolved, operatingState));
    }

    /** One candidate in one state without bands, clean or with dirt. */
    public static Run<Trial> trial(ResolvedCase resolved, Trial.Request request) {
        int position = resolved.requirePosition(request.candidate());
        OperatingState operatingState = operatingState(resolved, request.state());
        return progress -> Optional.of(TrialWriter.write(resolved, position, operatingState, request));
    }

    /**
     * One operating point of a candidate in a state.
     *
     * @param temperature oil temperature [K], within -40 to 150 degrees C
     */
    public static Run<PointResult> point(ResolvedCase resolved, String candidate, String state, double temperature) {
        return point(resolved, candidate, operatingState(resolved, state), temperature);
    }

    /**
     * One operating point of a candidate on a flow stand.
     *
     * @param flow [m3/s], at least 0
     * @param temperature oil temperature [K], within -40 to 150 degrees C
     */
    public static Run<PointResult> pointAtFlow(
            ResolvedCase resolved, String candidate, double flow, double temperature) {
        return point(resolved, candidate, OperatingState.of(OperatingState.FLOW_STAND, "", flow), temperature);
    }

    private static Run<PointResult> point(
            ResolvedCase resolved, String candidate, OperatingState operatingState, double temperature) {
        int position = resolved.requirePosition(candidate);
        return progress -> Optional.of(PointWriter.inState(resolved, position, operatingState, temperature));
    }

    /** Bypass share of a candidate over oil temperature and engine speed, or flow where the case has no engine. */
    public static Run<MapResult> map(ResolvedCase resolved, String candidate) {
        int position = resolved.requirePosition(candidate);
        return progress -> MapWriter.map(resolved, position, progress);
    }

    /**
     * How sure the answers are, and which measurement would narrow them most.
     *
     * @param draws number of draws, at least 16; a power of two covers most evenly
     * @param seed same seed, same result, bit for bit
     */
    public static Run<ConfidenceResult> confidence(ResolvedCase resolved, int draws, long seed) {
        return progress -> CaseConfidence.run(resolved, draws, seed, progress);
    }

    /**
     * What a case takes its engine for, and what is worth asking the owner; empty if the kind of the engine is not told, it
     * has no cold idle, or no valve acts on the first candidate.
     */
    public static Optional<Run<EngineProfile>> engineProfile(ResolvedCase resolved) {
        return EngineProfiler.isPossible(resolved)
                ? Optional.of(progress -> Optional.of(EngineProfiler.profile(resolved)))
                : Optional.empty();
    }

    /** What the start of a case can be asked; empty if it has none. */
    public static Optional<StartOutline> startOutline(ResolvedCase resolved) {
        return StartPlan.isStated(resolved)
                ? Optional.of(new StartPlan(resolved, ColdStartRequest.AS_STATED).outline())
                : Optional.empty();
    }

    /** A cold start in time; empty if the case does not say how it is started. One that would begin hot throws. */
    public static Optional<Run<ColdStart>> coldStart(ResolvedCase resolved, ColdStartRequest request) {
        return starter(resolved, request).map(starter -> starter::run);
    }

    /**
     * The same start from the coldest temperature of the case upward, everything soaked through; empty as
     * {@link #coldStart}. A case with a logged oil temperature throws.
     */
    public static Optional<Run<ColdStartSweep>> coldStartSweep(ResolvedCase resolved, ColdStartRequest request) {
        return starter(resolved, request).map(starter -> progress -> starter.sweep(false, progress));
    }

    /** The same with bands, from fewer temperatures. */
    public static Optional<Run<ColdStartSweep>> bandedColdStartSweep(ResolvedCase resolved, ColdStartRequest request) {
        return starter(resolved, request).map(starter -> progress -> starter.sweep(true, progress));
    }

    private static Optional<ColdStartWriter> starter(ResolvedCase resolved, ColdStartRequest request) {
        return StartPlan.isStated(resolved) ? Optional.of(new ColdStartWriter(resolved, request)) : Optional.empty();
    }

    /**
     * Service life of all candidates; empty if the case does not say what its filters go through.
     *
     * @param horizon running time to look at [s], above 0; that of the case if empty
     */
    public static Optional<Run<ServiceResult>> service(ResolvedCase resolved, OptionalDouble horizon) {
        return DutyCycle.of(resolved)
                .map(cycle -> horizon.isPresent() ? cycle.withHorizon(horizon.getAsDouble()) : cycle)
                .map(cycle -> progress -> ServiceWriter.write(resolved, cycle, progress));
    }

    /**
     * How one candidate loads with dirt in service, best values; empty if case or sheet says too little for a service.
     *
     * @param horizon running time up to which to know it [s], above 0
     */
    public static Optional<Loading> loading(ResolvedCase resolved, String candidate, double horizon) {
        return Loading.of(resolved, resolved.requirePosition(candidate), horizon);
    }

    /**
     * A virtual multi-pass test; empty if the sheet has no capacity or family, or no rating.
     *
     * @param leakShare share of the flow that leaks past the clean element [0..1, below 1]; grows with the pressure drop
     */
    public static Optional<Run<MultiPassReport>> multiPass(ResolvedCase resolved, String candidate, double leakShare) {
        int position = resolved.requirePosition(candidate);
        Leak leak = new Leak(leakShare, Leak.Kind.LAMINAR_GAP);
        return MultiPassWriter.isPossible(resolved, position)
                ? Optional.of(progress -> Optional.of(MultiPassWriter.run(resolved, position, leak)))
                : Optional.empty();
    }

    /**
     * Each candidate with its bypass valve set to one opening pressure after another: opening temperatures, what the stated
     * start brings, and what the medium must bear.
     *
     * @param candidate one candidate; all of them if empty
     * @param from lowest setting [Pa], above 0
     * @param to highest setting [Pa], above from
     */
    public static Run<SettingsResult> settings(
            ResolvedCase resolved, Optional<String> candidate, double from, double to) {
        if (!(from > 0 && to > from)) {
            throw new IllegalArgumentException("from must be above 0 Pa and below to, was " + from + " to " + to);
        }
        return progress -> SettingsWriter.write(resolved, candidate, from, to, progress);
    }

    /** What stands in the way of sizing a candidate; empty if nothing does. */
    public static Optional<Notice> sizingObstacle(ResolvedCase resolved, SizingRequest request) {
        return CaseSizing.obstacle(resolved, request);
    }

    /** What just meets a target; throws if {@link #sizingObstacle} stands in the way. */
    public static Run<SizingResult> size(ResolvedCase resolved, SizingRequest request) {
        return progress -> CaseSizing.run(resolved, request, progress);
    }

    /**
     * The chain behind a number of a candidate.
     *
     * @throws IllegalArgumentException if there is no such quantity, or if a temperature is given for one that belongs to
     *     none
     */
    public static Run<Explanation> explain(ResolvedCase resolved, ExplainRequest request) {
        OperatingState operatingState = request.state()
                .map(name -> operatingState(resolved, name))
                .orElseGet(() -> resolved.operatingStates().get(0));
        return progress -> Optional.of(Explainer.explain(resolved, operatingState, request));
    }

    /** Names of the numbers that can be explained. */
    public static List<String> explainableQuantities() {
        return Explainer.QUANTITIES;
    }

    /** Those of them that belong to one oil temperature. */
    public static List<String> explainableAtTemperature() {
        return Explainer.AT_TEMPERATURE;
    }

    /** What is known of a candidate, and from which tests and statements. */
    public static Run<EvidenceReport> evidence(ResolvedCase resolved, String candidate) {
        int position = resolved.requirePosition(candidate);
        return progress -> Optional.of(EvidenceWriter.report(resolved, position));
    }

    /** Tests that can be planned. */
    public static List<String> plannableTests() {
        return PlanWriter.TESTS;
    }

    /**
     * What a home or bench test would show and be worth.
     *
     * @param test key of the test
     * @param resolution scale step of the reading [SI]; a common one if empty
     * @throws IllegalArgumentException if there is no such test, or the sheet says too little for it
     */
    public static Run<TestPlan> plan(ResolvedCase resolved, String candidate, String test, OptionalDouble resolution) {
        int position = resolved.requirePosition(candidate);
        return progress -> Optional.of(PlanWriter.plan(resolved, position, test, resolution));
    }

    private static OperatingState operatingState(ResolvedCase resolved, String state) {
        return resolved.operatingState(state)
                .orElseThrow(() -> new IllegalArgumentException("no state " + state + " in " + resolved.stateNames()));
    }
}
