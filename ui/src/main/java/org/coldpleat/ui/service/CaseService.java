package org.coldpleat.ui.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.steady.Glance;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.writing.CaseDraft;

/**
 * The one door from both faces to the model. Every method is pure apart from {@link #open}, which reads one file, and
 * may be called from any thread.
 */
public final class CaseService {
    private final Function<Path, Opening> opener;
    private final Drafts drafts;
    private final List<String> explainable;

    /** Resolves a draft, with what it was before its last change. */
    interface Drafts {
        Opening open(String name, CaseDraft draft, Optional<OpenedCase> before);
    }

    /** The service over the case reader and the model. */
    public static CaseService standard() {
        return new CaseService(ModelCases::open, ModelCases::openDraft, ModelCases.explainable());
    }

    CaseService(Function<Path, Opening> opener, List<String> explainable) {
        this(
                opener,
                (name, draft, before) -> {
                    throw new UnsupportedOperationException("this service reads files only");
                },
                explainable);
    }

    private CaseService(Function<Path, Opening> opener, Drafts drafts, List<String> explainable) {
        this.drafts = Objects.requireNonNull(drafts, "drafts");
        this.opener = Objects.requireNonNull(opener, "opener");
        this.explainable = List.copyOf(explainable);
    }

    /**
     * Reads and resolves a case file.
     *
     * @param file case file, YAML
     * @return the case, or its problems; a file that cannot be read is a problem too
     */
    public Opening open(Path file) {
        return opener.apply(file);
    }

    /**
     * Resolves a case that is being written.
     *
     * @param name of the file, for messages; files named in the case are looked for beside it
     * @param draft the case
     * @param before the case as it was understood before the last change; what did not change since is taken from there,
     *     and gives the same numbers
     */
    public Opening openDraft(String name, CaseDraft draft, Optional<OpenedCase> before) {
        return drafts.open(name, draft, before);
    }

    /** The oil temperatures that a case looks at. */
    public OilRange range(OpenedCase opened) {
        return opened.runs().range();
    }

    /** Compares all candidates in all states over the whole range of oil temperature. */
    public Comparison compare(OpenedCase opened) {
        return compare(opened, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told how far it is; may cancel
     * @return the comparison, or nothing if cancelled
     */
    public Optional<Comparison> compare(OpenedCase opened, Progress progress) {
        return opened.runs().compare(progress);
    }

    /**
     * All candidates in one state without bands: quick enough to follow a value that is being changed.
     *
     * @param state name of a state of the case
     */
    public Glance glance(OpenedCase opened, String state) {
        requireState(opened, state);
        return opened.runs().glance(state);
    }

    /** Tries values out on candidates, one after another; for one thread at a time. */
    public Trials trials() {
        return new Trials(this);
    }

    /**
     * The case with a change on one candidate; its document stays that of the case as written.
     *
     * @return empty if no filter can be changed so
     */
    public Optional<OpenedCase> changed(OpenedCase opened, String candidate, CandidateChange change) {
        requireCandidate(opened, candidate);
        return opened.runs().changed(candidate, change);
    }

    /** What a candidate is as it stands, best values. */
    public Present present(OpenedCase opened, String candidate) {
        requireCandidate(opened, candidate);
        return opened.runs().present(candidate);
    }

    /**
     * One candidate in one state at one oil temperature.
     *
     * @param candidate name of a candidate of the case
     * @param state name of a state of the case
     * @param temperature oil temperature [K]
     */
    public PointResult point(OpenedCase opened, String candidate, String state, double temperature) {
        requireCandidate(opened, candidate);
        requireState(opened, state);
        return opened.runs().point(candidate, state, temperature);
    }

    /**
     * One candidate with a given flow at one oil temperature.
     *
     * @param candidate name of a candidate of the case
     * @param flow flow through the filter [m3/s], above 0
     * @param temperature oil temperature [K]
     */
    public PointResult pointAtFlow(OpenedCase opened, String candidate, double flow, double temperature) {
        requireCandidate(opened, candidate);
        return opened.runs().pointAtFlow(candidate, flow, temperature);
    }

    /** Bypass share of one candidate over oil temperature and speed, or flow where the case has no engine. */
    public MapResult map(OpenedCase opened, String candidate) {
        return map(opened, candidate, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told how far it is; may cancel
     * @return the map, or nothing if cancelled
     */
    public Optional<MapResult> map(OpenedCase opened, String candidate, Progress progress) {
        requireCandidate(opened, candidate);
        return opened.runs().map(candidate, progress);
    }

    /**
     * Service life of all candidates.
     *
     * @param horizon running time to look at [s], above 0; that of the case if empty
     * @return the result; empty if the case has no duty
     */
    public Optional<ServiceResult> service(OpenedCase opened, OptionalDouble horizon) {
        return service(opened, horizon, Progress.NONE);
    }

    /**
     * The same, watched.
     *
     * @param progress told how far it is; may cancel
     * @return the result; empty if the case has no duty, or if cancelled
     */
    public Optional<ServiceResult> service(OpenedCase opened, OptionalDouble horizon, Progress progress) {
        return opened.runs().service(horizon, progress);
    }

    /** What the start of a case can be asked; empty if it has none. */
    public Optional<StartOutline> startOutline(OpenedCase opened) {
        return opened.runs().startOutline();
    }

    /**
     * A cold start in time.
     *
     * @return the result; empty if the case has no start
     */
    public Optional<ColdStart> coldStart(OpenedCase opened, ColdStartRequest request) {
        return coldStart(opened, request, Progress.NONE);
    }

    /**
     * The same, watched.
     *
     * @param progress told how far it is; may cancel
     * @return the result; empty if the case has no start, or if cancelled
     */
    public Optional<ColdStart> coldStart(OpenedCase opened, ColdStartRequest request, Progress progress) {
        request.candidate().ifPresent(name -> requireCandidate(opened, name));
        return opened.runs().coldStart(request, progress);
    }

    /**
     * Cold starts from the coldest temperature of the case upward, everything soaked through.
     *
     * @return the result; empty if the case has no start
     */
    public Optional<ColdStartSweep> coldStartSweep(OpenedCase opened, ColdStartRequest request) {
        request.candidate().ifPresent(name -> requireCandidate(opened, name));
        return opened.runs().coldStartSweep(request);
    }

    /**
     * The same with bands, from fewer temperatures.
     *
     * @param progress told how far it is; may cancel
     * @return the result; empty if the case has no start, or if cancelled
     */
    public Optional<ColdStartSweep> bandedColdStartSweep(
            OpenedCase opened, ColdStartRequest request, Progress progress) {
        request.candidate().ifPresent(name -> requireCandidate(opened, name));
        return opened.runs().bandedColdStartSweep(request, progress);
    }

    /**
     * A virtual multi-pass test of one candidate.
     *
     * @param candidate name of a candidate of the case
     * @param leakShare share of the flow that leaks past the clean element [0..1, below 1]
     * @return the result; empty if the sheet says too little for one
     */
    public Optional<MultiPassReport> multiPass(OpenedCase opened, String candidate, double leakShare) {
        requireCandidate(opened, candidate);
        return opened.runs().multiPass(candidate, leakShare);
    }

    /**
     * What is known of one candidate, and from which tests.
     *
     * @param candidate name of a candidate of the case
     */
    public EvidenceReport evidence(OpenedCase opened, String candidate) {
        requireCandidate(opened, candidate);
        return opened.runs().evidence(candidate);
    }

    /**
     * How sure the answers of a case are.
     *
     * @param draws number of draws, at least 16
     * @param seed same seed, same result
     * @param progress told how far it is; may cancel
     * @return the result, or nothing if cancelled
     */
    public Optional<ConfidenceResult> confidence(OpenedCase opened, int draws, long seed, Progress progress) {
        return opened.runs().confidence(draws, seed, progress);
    }

    /**
     * Candidates with their bypass valves set to one opening pressure after another.
     *
     * @param candidate name of one candidate; all of them if empty
     * @param from lowest setting [Pa], above 0
     * @param to highest setting [Pa], above from
     */
    public SettingsResult settings(OpenedCase opened, Optional<String> candidate, double from, double to) {
        return settings(opened, candidate, from, to, Progress.NONE).orElseThrow();
    }

    /**
     * The same, watched.
     *
     * @param progress told how far it is; may cancel
     * @return the comparison, or nothing if cancelled
     */
    public Optional<SettingsResult> settings(
            OpenedCase opened, Optional<String> candidate, double from, double to, Progress progress) {
        candidate.ifPresent(name -> requireCandidate(opened, name));
        return opened.runs().settings(candidate, from, to, progress);
    }

    /**
     * What just meets a target: which area, pleat count, medium, setting or oil grade of one candidate.
     *
     * @param question what is to be sized
     * @param progress told how far it is; may cancel
     */
    public SizingOutcome size(OpenedCase opened, SizingQuestion question, Progress progress) {
        requireCandidate(opened, question.candidate());
        return opened.runs().size(question, progress);
    }

    /** Keys of the tests that can be planned. */
    public List<String> plannable() {
        return Simulation.plannableTests();
    }

    /**
     * What a home or bench test of one candidate would show and be worth.
     *
     * @param candidate name of a candidate of the case
     * @param test key of the test
     * @param resolution scale step of the reading [SI]; a common one if empty
     * @throws IllegalArgumentException if the sheet says too little to plan the test
     */
    public TestPlan plan(OpenedCase opened, String candidate, String test, OptionalDouble resolution) {
        requireCandidate(opened, candidate);
        return opened.runs().plan(candidate, test, resolution);
    }

    /** Names of the numbers that can be explained. */
    public List<String> explainable() {
        return explainable;
    }

    /** Those of them that belong to one oil temperature. */
    public List<String> explainableAtTemperature() {
        return Simulation.explainableAtTemperature();
    }

    /** The chain of values behind a result. */
    public Explanation explain(OpenedCase opened, ExplainRequest request) {
        requireCandidate(opened, request.candidate());
        request.state().ifPresent(name -> requireState(opened, name));
        return opened.runs().explain(request);
    }

    static void requireCandidate(OpenedCase opened, String candidate) {
        if (!opened.candidates().contains(candidate)) {
            throw new IllegalArgumentException(
                    "candidate must be one of " + opened.candidates() + ", was " + candidate);
        }
    }

    static void requireState(OpenedCase opened, String state) {
        if (!opened.states().contains(state)) {
            throw new IllegalArgumentException("state must be one of " + opened.states() + ", was " + state);
        }
    }
}
