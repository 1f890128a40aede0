package org.coldpleat.ui.report.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.SizingQuestion;
import org.coldpleat.ui.service.UsualSettings;

/** Runs what a report needs. */
public final class ReportRun {
    /** Draws behind the chances unless others are asked for. */
    public static final int DRAWS = 256;

    /** Seed of the draws unless another is asked for. */
    public static final long SEED = 1;

    private static final List<String> OF_THE_SHEET =
            List.of("mediumArea", "mediumResistance", "channelFactor", "hotPressureDrop");

    /** Explained where any oil goes round the medium, in the coldest named oil. */
    public static final String SHARE = "bypassShare";

    private static final int FEWEST_DRAWS = 16;

    private ReportRun() {}

    /**
     * Runs a case for its report.
     *
     * @param draws draws behind chances; 0 leaves the confidence part out
     * @param progress told how far it is; may end the work
     * @return what the report is written from; empty if the work was ended
     */
    public static Optional<ReportInput> of(
            CaseService service,
            OpenedCase opened,
            UnitSystem units,
            int draws,
            long seed,
            ReportWords words,
            Progress progress) {
        Optional<Comparison> compared = service.compare(opened, progress);
        if (compared.isEmpty()) {
            return Optional.empty();
        }
        Comparison comparison = compared.get();
        Optional<ConfidenceResult> confidence =
                draws == 0 ? Optional.empty() : service.confidence(opened, draws, seed, progress);
        Optional<SettingsResult> settings =
                service.settings(opened, Optional.empty(), UsualSettings.from(), UsualSettings.to(), progress);
        List<PointResult> hardest = hardestPoints(service, opened, comparison);
        List<SizingResult> pleats = pleats(service, opened, hardest, Math.max(FEWEST_DRAWS, draws), seed, progress);
        if (progress.cancelled() || settings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ReportInput(
                comparison,
                opened.understood(),
                opened.document().map(CaseDocument::words).orElse(Map.of()),
                chains(service, opened, comparison),
                opened.candidates().stream()
                        .map(name -> service.map(opened, name))
                        .toList(),
                drawings(opened, hardest, units),
                opened.candidates().stream()
                        .map(name -> service.evidence(opened, name))
                        .toList(),
                confidence,
                start(service, opened),
                service.service(opened, OptionalDouble.empty()),
                settings.get(),
                pleats,
                units,
                words));
    }

    /** How many pleats would keep each valve shut where it is hardest; none for a candidate without known pleats. */
    private static List<SizingResult> pleats(
            CaseService service,
            OpenedCase opened,
            List<PointResult> hardest,
            int draws,
            long seed,
            Progress progress) {
        List<SizingResult> pleats = new ArrayList<>();
        for (PointResult point : hardest) {
            if (!progress.cancelled() && point.bypass().isPresent()) {
                SizingQuestion question = SizingQuestion.pleatsThatKeepShut(
                        point.candidate(), point.temperature(), point.state(), draws, seed);
                service.size(opened, question, progress).result().ifPresent(pleats::add);
            }
        }
        return pleats;
    }

    /** The start as the case has it; empty without one, or if it would begin hot. */
    public static Optional<ColdStart> start(CaseService service, OpenedCase opened) {
        return service.startOutline(opened)
                .filter(outline -> outline.from() < outline.hot())
                .flatMap(outline -> service.coldStart(opened, ColdStartRequest.AS_STATED));
    }

    private static Map<String, Explanation> chains(CaseService service, OpenedCase opened, Comparison comparison) {
        Map<String, Explanation> chains = new LinkedHashMap<>();
        for (CandidateResult candidate : comparison.candidates()) {
            for (StateResult state : candidate.states()) {
                chains.put(
                        ReportInput.chainKey(candidate.name(), state.state(), "openingTemperature"),
                        service.explain(
                                opened, ExplainRequest.of(candidate.name()).in(state.state())));
            }
            for (StateResult state : candidate.states()) {
                if (state.shares().stream().anyMatch(at -> at.share().value() > 0)) {
                    ExplainRequest share = ExplainRequest.of(candidate.name())
                            .in(state.state())
                            .about(SHARE);
                    chains.put(
                            ReportInput.chainKey(candidate.name(), state.state(), SHARE),
                            service.explain(opened, share));
                }
            }
            for (String quantity : OF_THE_SHEET) {
                chains.put(
                        ReportInput.chainKey(candidate.name(), "", quantity),
                        service.explain(
                                opened, ExplainRequest.of(candidate.name()).about(quantity)));
            }
        }
        return chains;
    }

    /** Every candidate cut open in the same oil and state. */
    private static List<CutawayDrawing> drawings(OpenedCase opened, List<PointResult> points, UnitSystem units) {
        double most = greatestFlow(points);
        List<CutawayDrawing> drawings = new ArrayList<>();
        for (PointResult point : points) {
            opened.sheet(point.candidate()).ifPresent(sheet -> drawings.add(Cutaway.of(sheet, point, most, units)));
        }
        return drawings;
    }

    /** Every candidate in the coldest named oil, in the state that asks most of any valve. */
    public static List<PointResult> hardestPoints(CaseService service, OpenedCase opened, Comparison comparison) {
        String state = comparison.candidates().stream()
                .flatMap(candidate -> candidate.states().stream())
                .max(Comparator.comparingDouble(one -> one.greatestRatio().value()))
                .map(StateResult::state)
                .orElse("");
        double coldest = comparison.named().stream()
                .mapToDouble(NamedTemperature::temperature)
                .min()
                .orElse(comparison.from());
        return opened.candidates().stream()
                .map(name -> service.point(opened, name, state, coldest))
                .toList();
    }

    /** The greatest flow among points [m3/s]; 0 if there is none. */
    public static double greatestFlow(List<PointResult> points) {
        return points.stream()
                .mapToDouble(PointResult::flow)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
    }
}
