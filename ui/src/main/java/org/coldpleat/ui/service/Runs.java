package org.coldpleat.ui.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.loading.service.Loading;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.steady.Glance;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.CaseDocument;

/** The runs of one opened case; the seam at which a test puts results of its own. */
interface Runs {
    /** The case as written; empty if it came from no file. */
    default Optional<CaseDocument> document() {
        return Optional.empty();
    }

    /** The oil temperatures that the case looks at. */
    default OilRange range() {
        throw new IllegalArgumentException("no range of oil temperatures here");
    }

    /** All candidates in all states; empty if cancelled. */
    Optional<Comparison> compare(Progress progress);

    /** All candidates in one state without bands, quickly. */
    default Glance glance(String state) {
        throw new IllegalArgumentException("no quick curves of " + state + " here");
    }

    /** One candidate in one state, quickly, clean or with dirt. */
    default Trial trial(Trial.Request request) {
        throw new IllegalArgumentException("no trial of " + request.candidate() + " here");
    }

    /** How a candidate loads up to a running time [s]; empty if the case says too little for a service. */
    default Optional<Loading> loading(String candidate, double horizon) {
        return Optional.empty();
    }

    /** The case with a change on a candidate; empty if no filter can be changed so. */
    default Optional<OpenedCase> changed(String candidate, CandidateChange change) {
        throw new IllegalArgumentException("no change of " + candidate + " here");
    }

    /** What a candidate is as it stands. */
    default Present present(String candidate) {
        throw new IllegalArgumentException("nothing known of " + candidate + " here");
    }

    PointResult point(String candidate, String state, double temperature);

    PointResult pointAtFlow(String candidate, double flow, double temperature);

    /** Bypass share over oil temperature and speed; empty if cancelled. */
    Optional<MapResult> map(String candidate, Progress progress);

    /** How sure the answers are; empty if cancelled. */
    default Optional<ConfidenceResult> confidence(int draws, long seed, Progress progress) {
        return Optional.empty();
    }

    /** Service life of all candidates; empty if the case has no duty, or if cancelled. */
    default Optional<ServiceResult> service(OptionalDouble horizon, Progress progress) {
        return Optional.empty();
    }

    /** What the start of the case can be asked; empty if it has none. */
    default Optional<StartOutline> startOutline() {
        return Optional.empty();
    }

    /** A cold start in time; empty if the case has none, or if cancelled. */
    default Optional<ColdStart> coldStart(ColdStartRequest request, Progress progress) {
        return Optional.empty();
    }

    /** Cold starts from a range of temperatures, with bands; empty if the case has no start, or if cancelled. */
    default Optional<ColdStartSweep> bandedColdStartSweep(ColdStartRequest request, Progress progress) {
        return Optional.empty();
    }

    /** Cold starts from a range of temperatures; empty if the case has no start. */
    default Optional<ColdStartSweep> coldStartSweep(ColdStartRequest request) {
        return Optional.empty();
    }

    /** A virtual multi-pass test; empty if the sheet says too little for one. */
    default Optional<MultiPassReport> multiPass(String candidate, double leakShare) {
        return Optional.empty();
    }

    /** Candidates at one valve setting after another. */
    default Optional<SettingsResult> settings(Optional<String> candidate, double from, double to, Progress progress) {
        throw new IllegalArgumentException("no settings from " + from + " to " + to + " here");
    }

    /** What just meets a target. */
    default SizingOutcome size(SizingQuestion question, Progress progress) {
        throw new IllegalArgumentException("nothing to size for " + question.candidate() + " here");
    }

    TestPlan plan(String candidate, String test, OptionalDouble resolution);

    EvidenceReport evidence(String candidate);

    Explanation explain(ExplainRequest request);
}
