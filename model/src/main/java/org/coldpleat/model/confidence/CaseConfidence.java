package org.coldpleat.model.confidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coldpleat.model.run.CaseDraws;
import org.coldpleat.model.run.ConfidenceResult;
import org.coldpleat.model.run.Progress;
import org.coldpleat.model.run.Quantiles;
import org.coldpleat.model.run.ResolvedCase;

/** How sure the answers of a case are: draws every unknown, the shared ones once for all candidates. */
public final class CaseConfidence {
    private static final int CURVE_POINTS = 81;
    private static final int VERIFIED = 32;
    private static final double SAME = 1e-3;
    private static final int LEAST_SHARE_DRAWS = 256;
    private static final int SHARE_DRAWS_PART = 8;

    private CaseConfidence() {}

    /**
     * Draws a case.
     *
     * @param resolved case
     * @param draws number of draws, at least 16; a power of two covers most evenly
     * @param seed same seed, same result, bit for bit
     * @param progress told of the advance; may cancel
     * @return the result, or nothing if cancelled
     */
    public static Optional<ConfidenceResult> run(ResolvedCase resolved, int draws, long seed, Progress progress) {
        if (draws < 16) {
            throw new IllegalArgumentException("draws must be at least 16, was " + draws);
        }
        CaseDraws cases = new CaseDraws(resolved);
        CaseModel model = new CaseModel(cases);
        List<UncertainQuantity> unknowns = model.unknowns();
        Optional<Propagation> drawn = Propagation.run(model, unknowns, draws, seed, progress);
        return drawn.flatMap(all -> result(cases, model, all, seed, progress));
    }

    /**
     * Bands and pairs of a case without taking them apart; several times quicker than {@link #run}.
     *
     * @param resolved case
     * @param draws number of draws, at least 16; a power of two covers most evenly
     * @param seed same seed, same result, bit for bit
     * @param progress told of the advance; may cancel
     * @return the bands, or nothing if cancelled
     */
    public static Optional<DrawnBands> bands(ResolvedCase resolved, int draws, long seed, Progress progress) {
        if (draws < 16) {
            throw new IllegalArgumentException("draws must be at least 16, was " + draws);
        }
        CaseModel model = new CaseModel(new CaseDraws(resolved));
        return Propagation.run(model, model.unknowns(), draws, seed, progress).map(all -> bands(resolved, model, all));
    }

    private static DrawnBands bands(ResolvedCase resolved, CaseModel model, Propagation all) {
        List<ConfidenceResult.StateOutcome> states = new ArrayList<>();
        List<ConfidenceResult.Warmer> pairs = new ArrayList<>();
        double[] grid = grid(resolved);
        int count = resolved.candidateNames().size();
        for (int s = 0; s < resolved.stateNames().size(); s++) {
            for (int i = 0; i < count; i++) {
                states.add(outcome(resolved, model, all, grid, i, s));
                for (int k = i + 1; k < count; k++) {
                    Pair pair = all.pair(model.opening(i, s), model.opening(k, s));
                    pairs.add(new ConfidenceResult.Warmer(
                            resolved.stateNames().get(s),
                            resolved.candidateNames().get(i),
                            resolved.candidateNames().get(k),
                            pair.greater(),
                            pair.equal(),
                            pair.less()));
                }
            }
        }
        return new DrawnBands(grid, states, pairs);
    }

    private static Optional<ConfidenceResult> result(
            CaseDraws cases, CaseModel model, Propagation all, long seed, Progress progress) {
        ResolvedCase resolved = cases.resolved();
        DrawnBands bands = bands(resolved, model, all);
        ConfidenceResult.Verified verified = verified(cases, model, all);
        int closest = closestCall(bands.outcomes());
        int count = resolved.candidateNames().size();
        return contributions(cases, model, closest % count, closest / count, all.draws(), seed, progress)
                .map(focus -> new ConfidenceResult(
                        resolved.title(),
                        cases.digest(),
                        all.draws(),
                        seed,
                        bands.temperature(),
                        bands.outcomes(),
                        bands.pairs(),
                        focus,
                        verified,
                        DrawNotices.of(bands.outcomes(), all.draws(), verified)));
    }

    /** The outcome whose valve is nearest to an even chance of opening. */
    private static int closestCall(List<ConfidenceResult.StateOutcome> outcomes) {
        int closest = 0;
        for (int k = 1; k < outcomes.size(); k++) {
            if (Math.abs(outcomes.get(k).chanceOpen() - 0.5)
                    < Math.abs(outcomes.get(closest).chanceOpen() - 0.5)) {
                closest = k;
            }
        }
        return closest;
    }

    private static double[] grid(ResolvedCase resolved) {
        double[] grid = new double[CURVE_POINTS];
        for (int i = 0; i < CURVE_POINTS; i++) {
            grid[i] = resolved.from() + (resolved.to() - resolved.from()) * i / (CURVE_POINTS - 1);
        }
        return grid;
    }

    private static ConfidenceResult.StateOutcome outcome(
            ResolvedCase resolved, CaseModel model, Propagation all, double[] grid, int i, int s) {
        Outcomes opening = all.outcomes(model.opening(i, s));
        List<Quantiles> ratios = new ArrayList<>();
        List<Quantiles> shares = new ArrayList<>();
        for (int n = 0; n < model.named().size(); n++) {
            ratios.add(quantiles(all.outcomes(model.ratio(i, s, n))));
            shares.add(quantiles(all.outcomes(model.share(i, s, n))));
        }
        double[] open = new double[grid.length];
        for (int t = 0; t < grid.length; t++) {
            open[t] = opening.probabilityAbove(grid[t]);
        }
        return new ConfidenceResult.StateOutcome(
                resolved.candidateNames().get(i),
                resolved.stateNames().get(s),
                quantiles(opening),
                1 - opening.never(),
                all.outcomes(model.possible(i)).unanswered(),
                opening.unanswered() - all.outcomes(model.possible(i)).unanswered(),
                open,
                ratios,
                shares,
                quantiles(all.outcomes(model.hotDrop(i, s))),
                quantiles(all.outcomes(model.resistance(i))));
    }

    private static Optional<ConfidenceResult.Focus> contributions(
            CaseDraws cases, CaseModel model, int candidate, int state, int draws, long seed, Progress progress) {
        ResolvedCase resolved = cases.resolved();
        Answer answer = new Answer(0, resolved.from(), resolved.to());
        Model opening = model.openingOnly(candidate, state);
        int part = Math.max(LEAST_SHARE_DRAWS, draws / SHARE_DRAWS_PART);
        List<UncertainQuantity> unknowns = model.unknowns().stream()
                .map(one -> concerns(one, candidate)
                        ? one
                        : new UncertainQuantity(
                                one.name(),
                                one.value().withSpread(0, org.coldpleat.shared.quantity.Spread.NONE),
                                one.shared(),
                                one.group()))
                .toList();
        Map<String, Double> remaining = new HashMap<>();
        cases.unknowns().forEach(one -> remaining.put(one.path(), CaseDraws.remainingAfterMeasuring(one)));
        Optional<SobolIndices> indices = SobolIndices.estimate(opening, answer, unknowns, part, seed, progress);
        return indices.flatMap(found -> NextMeasurement.rank(opening, answer, unknowns, remaining, part, seed, progress)
                .map(gains -> new ConfidenceResult.Focus(
                        resolved.candidateNames().get(candidate),
                        resolved.stateNames().get(state),
                        found.shares().stream()
                                .map(one -> new ConfidenceResult.Contribution(
                                        one.group(), one.first(), one.firstError(), one.total(), one.totalError()))
                                .toList(),
                        gains.stream()
                                .map(one -> new ConfidenceResult.Measurement(
                                        one.group(), one.remaining(), one.spreadNow(), one.spreadAfter(), one.error()))
                                .toList())));
    }

    private static Quantiles quantiles(Outcomes outcomes) {
        return new Quantiles(outcomes.median(), outcomes.low(), outcomes.high());
    }

    private static boolean concerns(UncertainQuantity one, int candidate) {
        return one.shared() || one.name().startsWith("candidates[" + candidate + "]");
    }

    /** Compares a sample of draws with the full search of all open intervals. */
    private static ConfidenceResult.Verified verified(CaseDraws cases, CaseModel model, Propagation all) {
        int sample = Math.min(VERIFIED, all.draws());
        List<ConfidenceResult.Verified> each = IntStream.range(0, sample)
                .parallel()
                .mapToObj(draw -> verified(cases, model, all, draw))
                .toList();
        return new ConfidenceResult.Verified(
                each.stream().mapToInt(ConfidenceResult.Verified::compared).sum(),
                each.stream().mapToInt(ConfidenceResult.Verified::differing).sum());
    }

    private static ConfidenceResult.Verified verified(CaseDraws cases, CaseModel model, Propagation all, int draw) {
        double[] values = all.input(draw);
        Map<String, Double> moved = new HashMap<>();
        for (int j = 0; j < values.length; j++) {
            moved.put(all.unknowns().get(j).name(), values[j]);
        }
        Optional<CaseDraws.Common> common = cases.common(moved);
        int compared = 0;
        int differing = 0;
        for (int i = 0; i < cases.resolved().candidateNames().size(); i++) {
            int candidate = i;
            Optional<CaseDraws.Own> own = common.flatMap(one -> one.candidate(candidate, moved));
            for (int s = 0; s < cases.resolved().stateNames().size(); s++) {
                double quick = all.answer(draw, model.opening(i, s));
                if (!Double.isNaN(quick)) {
                    double full = own.orElseThrow().openingByFullSearch(s);
                    compared++;
                    differing += quick == full || Math.abs(quick - full) < SAME ? 0 : 1;
                }
            }
        }
        return new ConfidenceResult.Verified(compared, differing);
    }
}
