package org.coldpleat.ui.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.EngineProfile;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.loading.service.Loading;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * A case that was read and understood, and the questions it can be asked, from any thread; {@link Simulation} says more of
 * each. What takes its time is worked out once, whoever asks.
 */
public class OpenedCase {
    private final ResolvedCase resolved;
    private final List<Object> inputs;
    private final Kept kept;

    /**
     * @param inputs what tells this case from all others
     * @param kept where answers are kept
     */
    OpenedCase(ResolvedCase resolved, List<Object> inputs, Kept kept) {
        this.resolved = Objects.requireNonNull(resolved, "resolved");
        this.inputs = List.copyOf(inputs);
        this.kept = Objects.requireNonNull(kept, "kept");
    }

    static OpenedCase of(ResolvedCase resolved, Kept kept) {
        return new OpenedCase(resolved, List.of(resolved.document().file(), resolved.digest()), kept);
    }

    ResolvedCase resolved() {
        return resolved;
    }

    Kept kept() {
        return kept;
    }

    /** Title of the case. */
    public String title() {
        return resolved.title();
    }

    /** True if the case says its data are invented. */
    public boolean invented() {
        return resolved.isInvented();
    }

    /** Names of the candidates in the order of the case. */
    public List<String> candidates() {
        return resolved.candidateNames();
    }

    /** Names of the states in the order of the case, flow stand first. */
    public List<String> states() {
        return resolved.stateNames();
    }

    /** The oil temperatures that the case looks at. */
    public OilRange range() {
        return new OilRange(resolved.from(), resolved.to());
    }

    /**
     * Every quantity that was understood, by its path, in the order of the file; with the usual spread of
     * its bench reading where none was written.
     */
    public Map<String, Measured> understood() {
        return resolved.understood();
    }

    /** The case as written. */
    public CaseDocument document() {
        return resolved.document();
    }

    /** The bench sheet of a candidate as written. */
    public Section sheet(String candidate) {
        return resolved.sheet(resolved.requirePosition(candidate));
    }

    /** What a candidate is as it stands, best values. */
    public Present present(String candidate) {
        return Present.of(Design.of(resolved, resolved.requirePosition(candidate)));
    }

    /**
     * The case with a change on one candidate, which keeps its name; the document stays that of the case as written.
     *
     * @return empty if no filter can be changed so
     */
    public Optional<OpenedCase> changed(String candidate, CandidateChange change) {
        int position = resolved.requirePosition(candidate);
        List<Object> with = new ArrayList<>(inputs);
        with.addAll(List.of(position, change));
        try {
            ResolvedCase other = change.applyTo(resolved, position).in(resolved, position);
            return Optional.of(new OpenedCase(other, with, kept));
        } catch (IllegalArgumentException noSuchFilter) {
            return Optional.empty();
        }
    }

    /** All candidates in all states over the whole range of oil temperature. */
    public Run<Comparison> compare() {
        return keep(Simulation.compare(resolved), "compare");
    }

    /** All candidates in one state without bands: quick enough to follow a value that is being changed. */
    public Run<QuickCurves> quickCurves(String state) {
        return Simulation.quickCurves(resolved, state);
    }

    /** One candidate in one state, quickly, clean or with dirt. */
    public Run<Trial> trial(Trial.Request request) {
        return Simulation.trial(resolved, request);
    }

    /** One candidate in one state at one oil temperature [K]. */
    public Run<PointResult> point(String candidate, String state, double temperature) {
        return Simulation.point(resolved, candidate, state, temperature);
    }

    /** One candidate with a given flow [m3/s], above 0, at one oil temperature [K]. */
    public Run<PointResult> pointAtFlow(String candidate, double flow, double temperature) {
        return Simulation.pointAtFlow(resolved, candidate, flow, temperature);
    }

    /** Bypass share of one candidate over oil temperature and speed, or flow where the case has no engine. */
    public Run<MapResult> map(String candidate) {
        return keep(Simulation.map(resolved, candidate), "map", candidate);
    }

    /** How sure the answers are. */
    public Run<ConfidenceResult> confidence(int draws, long seed) {
        return keep(Simulation.confidence(resolved, draws, seed), "confidence", draws, seed);
    }

    /** What the engine is taken for, and what is worth asking its owner; empty if its kind is not told. */
    public Optional<Run<EngineProfile>> engineProfile() {
        return Simulation.engineProfile(resolved).map(run -> keep(run, "engineProfile"));
    }

    /** Service life of all candidates up to a running time [s], that of the case if empty; empty without a duty. */
    public Optional<Run<ServiceResult>> service(OptionalDouble horizon) {
        return Simulation.service(resolved, horizon).map(run -> keep(run, "service", horizon));
    }

    /** How one candidate loads up to a running time [s]; empty if the case says too little for a service. */
    public Optional<Loading> loading(String candidate, double horizon) {
        return Simulation.loading(resolved, candidate, horizon);
    }

    /** What the start of the case can be asked; empty if it has none. */
    public Optional<StartOutline> startOutline() {
        return Simulation.startOutline(resolved);
    }

    /** A cold start in time; empty if the case has no start. */
    public Optional<Run<ColdStart>> coldStart(ColdStartRequest request) {
        return Simulation.coldStart(resolved, request).map(run -> keep(run, "coldStart", request));
    }

    /** Cold starts from the coldest temperature of the case upward; empty if the case has no start. */
    public Optional<Run<ColdStartSweep>> coldStartSweep(ColdStartRequest request) {
        return Simulation.coldStartSweep(resolved, request).map(run -> keep(run, "coldStartSweep", request));
    }

    /** The same with bands, from fewer temperatures. */
    public Optional<Run<ColdStartSweep>> bandedColdStartSweep(ColdStartRequest request) {
        return Simulation.bandedColdStartSweep(resolved, request)
                .map(run -> keep(run, "bandedColdStartSweep", request));
    }

    /** A virtual multi-pass test with a leak past the clean element [0..1]; empty if the sheet says too little. */
    public Optional<Run<MultiPassReport>> multiPass(String candidate, double leakShare) {
        return Simulation.multiPass(resolved, candidate, leakShare)
                .map(run -> keep(run, "multiPass", candidate, leakShare));
    }

    /** One candidate, or all, at one setting of its valve after another [Pa]. */
    public Run<SettingsResult> settings(Optional<String> candidate, double from, double to) {
        return keep(Simulation.settings(resolved, candidate, from, to), "settings", candidate, from, to);
    }

    /** What just meets a target, or what stands in the way. */
    public Run<SizingOutcome> size(SizingQuestion question) {
        return keep(SizingOutcome.of(resolved, question), "size", question);
    }

    /** What is known of a candidate, and from which tests. */
    public Run<EvidenceReport> evidence(String candidate) {
        return Simulation.evidence(resolved, candidate);
    }

    /** What a test would show and be worth, its reading in steps of the resolution [SI], a common one if empty. */
    public Run<TestPlan> plan(String candidate, String test, OptionalDouble resolution) {
        return Simulation.plan(resolved, candidate, test, resolution);
    }

    /** The chain of values behind a result. */
    public Run<Explanation> explain(ExplainRequest request) {
        return Simulation.explain(resolved, request);
    }

    private <T> Run<T> keep(Run<T> run, Object... question) {
        List<Object> dependsOn = new ArrayList<>(inputs);
        dependsOn.addAll(List.of(question));
        return kept.run(dependsOn, run);
    }
}
