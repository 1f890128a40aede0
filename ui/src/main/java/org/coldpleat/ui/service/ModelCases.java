package org.coldpleat.ui.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.CaseConfidence;
import org.coldpleat.model.certainty.ConfidenceResult;
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
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.CaseSizing;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SizingRequest;
import org.coldpleat.model.sizing.TargetText;
import org.coldpleat.model.steady.Glance;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.notice.Notice;

/** Opens cases with the case reader and runs them with the model. */
final class ModelCases {
    private ModelCases() {}

    static List<String> explainable() {
        return Simulation.explainableQuantities();
    }

    static Opening open(Path file) {
        return opened(CaseReader.read(file), Optional.empty());
    }

    static Opening openDraft(String name, CaseDraft draft, Optional<OpenedCase> before) {
        Optional<ResolvedCase> known = before.map(OpenedCase::runs)
                .filter(ModelRuns.class::isInstance)
                .map(runs -> ((ModelRuns) runs).resolved());
        return opened(CaseReader.read(name, draft, known.map(ResolvedCase::document)), known);
    }

    private static Opening opened(CaseReading reading, Optional<ResolvedCase> before) {
        if (reading.document().isEmpty()) {
            return failed(reading.problems());
        }
        CaseDocument document = reading.document().get();
        Resolution resolution =
                before.isPresent() ? Simulation.resolveAfter(before.get(), document) : Simulation.resolve(document);
        return resolution
                .resolved()
                .map(ModelCases::opened)
                .map(Opening::of)
                .orElseGet(() -> failed(resolution.problems()));
    }

    private static Opening failed(List<CaseProblem> problems) {
        return Opening.failed(problems.stream().map(Problem::of).toList());
    }

    private static OpenedCase opened(ResolvedCase resolved) {
        return new OpenedCase(
                resolved.title(),
                resolved.document().root().flag("invented").orElse(false),
                resolved.candidateNames(),
                resolved.stateNames(),
                resolved.understood(),
                new ModelRuns(resolved));
    }

    private record ModelRuns(ResolvedCase resolved) implements Runs {
        @Override
        public Optional<CaseDocument> document() {
            return Optional.of(resolved.document());
        }

        @Override
        public OilRange range() {
            return new OilRange(resolved.from(), resolved.to());
        }

        @Override
        public Optional<Comparison> compare(Progress progress) {
            return Simulation.compare(resolved, progress);
        }

        @Override
        public Glance glance(String state) {
            return Simulation.glance(resolved, state);
        }

        @Override
        public Trial trial(Trial.Request request) {
            return Simulation.trial(resolved, request);
        }

        @Override
        public Optional<Loading> loading(String candidate, double horizon) {
            return Simulation.loading(resolved, candidate, horizon);
        }

        @Override
        public Optional<OpenedCase> changed(String candidate, CandidateChange change) {
            int position = resolved.requirePosition(candidate);
            try {
                return Optional.of(opened(change.applyTo(resolved, position).in(resolved, position)));
            } catch (IllegalArgumentException noSuchFilter) {
                return Optional.empty();
            }
        }

        @Override
        public Present present(String candidate) {
            Design design = Design.of(resolved, resolved.candidateNames().indexOf(candidate));
            return new Present(
                    design.filter()
                            .elementValve()
                            .map(valve -> new Present.Valve(
                                    valve.openingPressure(), valve.closingPressure(), valve.springRate())),
                    design.grossArea(),
                    design.freeShare(),
                    design.foldShare(),
                    design.mediumResistance());
        }

        @Override
        public PointResult point(String candidate, String state, double temperature) {
            return Simulation.point(resolved, candidate, state, temperature);
        }

        @Override
        public PointResult pointAtFlow(String candidate, double flow, double temperature) {
            return Simulation.pointAtFlow(resolved, candidate, flow, temperature);
        }

        @Override
        public Optional<MapResult> map(String candidate, Progress progress) {
            return Simulation.map(resolved, candidate, progress);
        }

        @Override
        public Optional<ConfidenceResult> confidence(int draws, long seed, Progress progress) {
            return CaseConfidence.run(resolved, draws, seed, progress);
        }

        @Override
        public Optional<SettingsResult> settings(
                Optional<String> candidate, double from, double to, Progress progress) {
            return Simulation.settings(resolved, candidate, from, to, progress);
        }

        @Override
        public SizingOutcome size(SizingQuestion question, Progress progress) {
            TargetText.Reading target =
                    TargetText.read(question.target(), resolved.stateNames(), resolved.from(), resolved.to());
            if (target.problem().isPresent()) {
                return new SizingOutcome(Optional.empty(), target.problem());
            }
            SizingRequest request = new SizingRequest(
                    question.candidate(),
                    question.variable(),
                    target.target().orElseThrow(),
                    question.confidence(),
                    question.loadedAfter(),
                    question.loadedShare(),
                    question.draws(),
                    question.seed());
            Optional<Notice> obstacle = CaseSizing.obstacle(resolved, request);
            return obstacle.isPresent()
                    ? new SizingOutcome(Optional.empty(), obstacle)
                    : new SizingOutcome(CaseSizing.run(resolved, request, progress), Optional.empty());
        }

        @Override
        public Optional<ServiceResult> service(OptionalDouble horizon, Progress progress) {
            return Simulation.hasService(resolved) ? Simulation.service(resolved, horizon, progress) : Optional.empty();
        }

        @Override
        public Optional<StartOutline> startOutline() {
            return Simulation.startOutline(resolved);
        }

        @Override
        public Optional<ColdStart> coldStart(ColdStartRequest request, Progress progress) {
            return Simulation.hasStart(resolved) ? Simulation.coldStart(resolved, request, progress) : Optional.empty();
        }

        @Override
        public Optional<ColdStartSweep> coldStartSweep(ColdStartRequest request) {
            return Simulation.hasStart(resolved)
                    ? Optional.of(Simulation.coldStartSweep(resolved, request))
                    : Optional.empty();
        }

        @Override
        public Optional<ColdStartSweep> bandedColdStartSweep(ColdStartRequest request, Progress progress) {
            return Simulation.hasStart(resolved)
                    ? Simulation.bandedColdStartSweep(resolved, request, progress)
                    : Optional.empty();
        }

        @Override
        public Optional<MultiPassReport> multiPass(String candidate, double leakShare) {
            return Simulation.hasMultiPass(resolved, candidate)
                    ? Optional.of(Simulation.multiPass(resolved, candidate, leakShare))
                    : Optional.empty();
        }

        @Override
        public TestPlan plan(String candidate, String test, OptionalDouble resolution) {
            return Simulation.plan(resolved, candidate, test, resolution);
        }

        @Override
        public EvidenceReport evidence(String candidate) {
            return Simulation.evidence(resolved, candidate);
        }

        @Override
        public Explanation explain(ExplainRequest request) {
            return Simulation.explain(resolved, request);
        }
    }
}
