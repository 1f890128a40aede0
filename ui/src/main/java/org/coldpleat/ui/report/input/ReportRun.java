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
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.SizingOutcome;
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
            OpenedCase opened, UnitSystem units, int draws, long seed, Progress progress) {
        Optional<Comparison> compared = opened.compare().with(progress);
        if (compared.isEmpty()) {
            return Optional.empty();
        }
        Comparison comparison = compared.get();
        Optional<ConfidenceResult> confidence =
                draws == 0 ? Optional.empty() : opened.confidence(draws, seed).with(progress);
        Optional<SettingsResult> settings = opened.settings(Optional.empty(), UsualSettings.from(), UsualSettings.to())
                .with(progress);
        List<PointResult> hardest = hardestPoints(opened, comparison);
        List<SizingResult> pleats = pleats(opened, hardest, Math.max(FEWEST_DRAWS, draws), seed, progress);
        List<MapResult> maps = opened.candidates().stream()
                .flatMap(name -> opened.map(name).with(progress).stream())
                .toList();
        Optional<ColdStart> start = start(opened, progress);
        Optional<ServiceResult> service = opened.service(OptionalDouble.empty()).flatMap(run -> run.with(progress));
        if (progress.cancelled() || settings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ReportInput(
                comparison,
                opened.understood(),
                opened.document().words(),
                chains(opened, comparison),
                maps,
                drawings(opened, hardest, units),
                opened.candidates().stream()
                        .map(name -> opened.evidence(name).now())
                        .toList(),
                confidence,
                start,
                service,
                settings.get(),
                pleats,
                units));
    }

    /** How many pleats would keep each valve shut where it is hardest; none for a candidate without known pleats. */
    private static List<SizingResult> pleats(
            OpenedCase opened, List<PointResult> hardest, int draws, long seed, Progress progress) {
        List<SizingResult> pleats = new ArrayList<>();
        for (PointResult point : hardest) {
            if (!progress.cancelled() && point.bypass().isPresent()) {
                SizingQuestion question = SizingQuestion.pleatsThatKeepShut(
                        point.candidate(), point.temperature(), point.state(), draws, seed);
                opened.size(question)
                        .with(progress)
                        .flatMap(SizingOutcome::result)
                        .ifPresent(pleats::add);
            }
        }
        return pleats;
    }

    /** The start as the case has it; empty without one, or if it would begin hot. */
    public static Optional<ColdStart> start(OpenedCase opened, Progress progress) {
        return opened.startOutline()
                .filter(outline -> outline.from() < outline.hot())
                .flatMap(outline -> opened.coldStart(ColdStartRequest.AS_STATED))
                .flatMap(run -> run.with(progress));
    }

    private static Map<String, Explanation> chains(OpenedCase opened, Comparison comparison) {
        Map<String, Explanation> chains = new LinkedHashMap<>();
        for (CandidateResult candidate : comparison.candidates()) {
            for (StateResult state : candidate.states()) {
                chains.put(
                        ReportInput.chainKey(candidate.name(), state.state(), "openingTemperature"),
                        opened.explain(ExplainRequest.of(candidate.name()).in(state.state()))
                                .now());
            }
            for (StateResult state : candidate.states()) {
                if (state.shares().stream().anyMatch(at -> at.share().value() > 0)) {
                    ExplainRequest share = ExplainRequest.of(candidate.name())
                            .in(state.state())
                            .about(SHARE);
                    chains.put(
                            ReportInput.chainKey(candidate.name(), state.state(), SHARE),
                            opened.explain(share).now());
                }
            }
            for (String quantity : OF_THE_SHEET) {
                chains.put(
                        ReportInput.chainKey(candidate.name(), "", quantity),
                        opened.explain(ExplainRequest.of(candidate.name()).about(quantity))
                                .now());
            }
        }
        return chains;
    }

    /** Every candidate cut open in the same oil and state. */
    private static List<CutawayDrawing> drawings(OpenedCase opened, List<PointResult> points, UnitSystem units) {
        double most = greatestFlow(points);
        List<CutawayDrawing> drawings = new ArrayList<>();
        for (PointResult point : points) {
            drawings.add(Cutaway.of(opened.sheet(point.candidate()), point, most, units));
        }
        return drawings;
    }

    /** Every candidate in the coldest named oil, in the state that asks most of any valve. */
    public static List<PointResult> hardestPoints(OpenedCase opened, Comparison comparison) {
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
                .map(name -> opened.point(name, state, coldest).now())
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
