package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.coldpleat.model.confidence.CandidateDraws;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.model.run.Design;
import org.coldpleat.model.run.DirtLoad;
import org.coldpleat.model.run.Progress;
import org.coldpleat.model.run.ResolvedCase;
import org.coldpleat.model.run.SizingFindings;
import org.coldpleat.model.run.SizingResult;
import org.coldpleat.model.run.SizingResult.Condition;
import org.coldpleat.model.run.SizingResult.Variable;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;

/**
 * Sizes a candidate of a case. Each draw of the unknowns is put to every value that is tried, so that two values differ
 * by what was changed and by nothing else.
 */
public final class CaseSizing {
    private static final String DIRT = "sizing.dirt";

    private CaseSizing() {}

    /** What stands in the way of a request; empty if nothing does. */
    public static Optional<Notice> obstacle(ResolvedCase resolved, SizingRequest request) {
        int position = resolved.requirePosition(request.candidate());
        Design design = Design.of(resolved, position);
        boolean valve = design.in(resolved, duty(resolved, request)).hasValve();
        boolean needsValve = request.target().kind() != Target.Kind.ELEMENT_BELOW;
        if ((needsValve && !valve) || (request.variable() == Variable.OPENING && !valve)) {
            return problem("size.noValve", request);
        }
        if (request.variable() == Variable.PLEATS && !design.hasPleats()) {
            return problem("size.noPleats", request);
        }
        boolean dirt =
                request.loadedAfter().isPresent() || request.loadedShare().isPresent();
        if (dirt && load(resolved, request).isEmpty()) {
            return problem(request.loadedAfter().isPresent() ? "size.noService" : "size.noCapacity", request);
        }
        return Optional.empty();
    }

    private static Optional<Notice> problem(String code, SizingRequest request) {
        return Optional.of(Notice.of(code, Severity.WARNING, request.candidate()));
    }

    private static int duty(ResolvedCase resolved, SizingRequest request) {
        int duty = resolved.stateNames().indexOf(request.target().state());
        if (duty < 0) {
            throw new IllegalArgumentException("no state " + request.target().state() + " in " + resolved.stateNames());
        }
        return duty;
    }

    private static Optional<DirtLoad> load(ResolvedCase resolved, SizingRequest request) {
        int position = resolved.requirePosition(request.candidate());
        return request.loadedAfter().isPresent()
                ? DirtLoad.after(resolved, position, request.loadedAfter().getAsDouble())
                : DirtLoad.ofShare(resolved, position, request.loadedShare().orElseThrow());
    }

    /**
     * Sizes a candidate.
     *
     * @param progress told of the advance; may cancel
     * @return the result, or nothing if cancelled
     * @throws IllegalArgumentException if something stands in the way, see {@link #obstacle}
     */
    public static Optional<SizingResult> run(ResolvedCase resolved, SizingRequest request, Progress progress) {
        obstacle(resolved, request).ifPresent(notice -> {
            throw new IllegalArgumentException("request cannot be met: " + notice);
        });
        int position = resolved.requirePosition(request.candidate());
        Design clean = Design.of(resolved, position);
        TargetTrials trials = TargetTrials.of(resolved, request.target());
        List<Draw> draws = draws(resolved, request, position);
        List<Optional<DirtLoad>> loads = new ArrayList<>(List.of(Optional.empty()));
        if (request.loadedAfter().isPresent() || request.loadedShare().isPresent()) {
            loads.add(load(resolved, request));
        }
        double present = present(clean, request.variable());
        List<Condition> conditions = new ArrayList<>();
        List<Notice> notices = new ArrayList<>();
        for (Optional<DirtLoad> load : loads) {
            ConditionSizing sizing = new ConditionSizing(trials, request, present, clean, draws, load, progress);
            Optional<Condition> condition = sizing.size();
            if (condition.isEmpty()) {
                return Optional.empty();
            }
            conditions.add(condition.get());
            notices.addAll(notices(request, sizing));
        }
        return Optional.of(result(resolved, request, present, conditions, notices));
    }

    private static double present(Design design, Variable variable) {
        return switch (variable) {
            case AREA -> design.grossArea();
            case PLEATS -> design.pleats().orElseThrow();
            case OPENING -> design.openingPressure().orElseThrow();
            case RESISTANCE -> design.mediumResistance();
            case GRADE -> Double.NaN;
        };
    }

    private static List<Draw> draws(ResolvedCase resolved, SizingRequest request, int position) {
        Measured dirt = Measured.exact(Kind.RATIO, 0, Provenance.MEASURED).withSpread(1, Spread.NORMAL);
        CandidateDraws draws =
                new CandidateDraws(resolved, position, List.of(UncertainQuantity.of(DIRT, dirt)), request.seed());
        return IntStream.range(0, request.draws())
                .parallel()
                .mapToObj(i -> draw(resolved, position, draws.values(i)))
                .toList();
    }

    private static Draw draw(ResolvedCase resolved, int position, Map<String, Double> values) {
        Map<String, Double> moved = new HashMap<>(values);
        double dirt = moved.remove(DIRT);
        try {
            return new Draw(Optional.of(Design.of(resolved, position, moved)), dirt);
        } catch (IllegalArgumentException impossible) {
            return new Draw(Optional.empty(), dirt);
        }
    }

    private static List<Notice> notices(SizingRequest request, ConditionSizing sizing) {
        List<Notice> notices = new ArrayList<>();
        if (sizing.crossings() > 1) {
            notices.add(Notice.of(
                    "size.manyCrossings", Severity.WARNING, request.candidate(), Integer.toString(sizing.crossings())));
        }
        OptionalDouble optimum = sizing.optimum();
        if (optimum.isPresent()) {
            notices.add(Notice.of(
                    "size.pleatOptimum",
                    Severity.INFO,
                    request.candidate(),
                    Long.toString(Math.round(optimum.getAsDouble()))));
        }
        return notices;
    }

    private static SizingResult result(
            ResolvedCase resolved,
            SizingRequest request,
            double present,
            List<Condition> conditions,
            List<Notice> notices) {
        SizingResult bare = new SizingResult(
                resolved.title(),
                false,
                "",
                request.candidate(),
                request.variable(),
                request.target().kind().name(),
                request.target().state(),
                request.target().temperature(),
                request.target().limit(),
                request.confidence(),
                request.draws(),
                request.seed(),
                present,
                conditions,
                List.of(),
                List.of(),
                notices.stream()
                        .distinct()
                        .sorted(Comparator.comparing(Notice::severity))
                        .toList());
        return SizingFindings.complete(resolved, bare);
    }
}
