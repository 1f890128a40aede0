package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.shared.source.Source;

/**
 * First-order bands of a start: each unknown in turn is moved one standard uncertainty up and down and the start computed
 * anew. The unknowns of the start itself are all taken; of those of oil, engine and filter the few that move the steady
 * answer at the start temperature most.
 */
@Source("JCGM 100:2008 (GUM), 5.1.3 note 2; the sides kept apart: derived here")
final class StartBands {
    private static final int STRONGEST = 8;
    private static final double COVERAGE_95 = 1.96;

    private final ResolvedCase resolved;
    private final Variants variants;
    private final StartPlan plan;
    private final int position;

    StartBands(ResolvedCase resolved, Variants variants, StartPlan plan, int position) {
        this.resolved = resolved;
        this.variants = variants;
        this.plan = plan;
        this.position = position;
    }

    /** The start of the candidate with its bands. */
    ColdStartCandidate candidate() {
        BuiltCandidate built = resolved.candidates().get(position);
        StartModel model = plan.model();
        StartUpResult best = StartUp.run(plan.spec(resolved.shared(), built, position, model));
        List<String> paths = new ArrayList<>(plan.unknowns().keySet());
        paths.addAll(strongest());
        double[][] ends = IntStream.range(0, 2 * paths.size())
                .parallel()
                .mapToObj(i -> outputs(moved(paths.get(i / 2), i % 2 == 0 ? 1 : -1)))
                .toArray(double[][]::new);
        double[] value = outputs(best);
        double[][] reach = new double[2][2];
        Map<String, Double> worth = new LinkedHashMap<>();
        for (int i = 0; i < paths.size(); i++) {
            for (int k = 0; k < 2; k++) {
                double one = ends[2 * i][k] - value[k];
                double other = ends[2 * i + 1][k] - value[k];
                double up = Math.max(0, Math.max(one, other));
                double down = Math.min(0, Math.min(one, other));
                reach[k][0] += down * down;
                reach[k][1] += up * up;
                if (k == 0) {
                    worth.put(paths.get(i), Math.max(up, -down));
                }
            }
        }
        List<String> included = paths.stream()
                .sorted(Comparator.comparingDouble((String path) -> -worth.get(path)))
                .toList();
        return new ColdStartCandidate(
                built.name(), hasValve(built), best, band(value[0], reach[0]), band(value[1], reach[1]), included);
    }

    private boolean hasValve(BuiltCandidate built) {
        return new DutyModel(resolved.shared(), built.filter(), plan.longestPhase()).hasValve();
    }

    private static StartBand band(double value, double[] squares) {
        return new StartBand(
                value,
                Math.max(0, value - COVERAGE_95 * Math.sqrt(squares[0])),
                value + COVERAGE_95 * Math.sqrt(squares[1]));
    }

    private static double[] outputs(StartUpResult result) {
        return new double[] {result.total().openSeconds(), result.total().unfilteredVolume()};
    }

    private StartUpResult moved(String path, double deviations) {
        BuiltCandidate built = resolved.candidates().get(position);
        Unknown own = plan.unknowns().get(path);
        if (own != null) {
            StartModel model = plan.moving(Map.of(path, own.moved(deviations)));
            return StartUp.run(plan.spec(resolved.shared(), built, position, model));
        }
        Unknown shared = resolved.sharedUnknowns().get(path);
        Unknown unknown =
                shared != null ? shared : resolved.ownUnknowns(position).get(path);
        double value = unknown.moved(unknown.upwardOnly() ? Math.max(0, deviations) : deviations);
        Map<String, Double> move = Map.of(path, value);
        return StartUp.run(
                shared != null
                        ? plan.spec(resolved.sharedMoving(move), built, position, plan.model())
                        : plan.spec(
                                resolved.shared(), resolved.candidateMoving(position, move), position, plan.model()));
    }

    /** Paths that move the steady valve ratio at the start temperature most; none without a valve. */
    private List<String> strongest() {
        if (!hasValve(resolved.candidates().get(position))) {
            return List.of();
        }
        double at = plan.model().from();
        Map<String, Double> changes = variants.contributions(position, plan.longestPhase(), 1, moved -> new double[] {
                    Math.log(Math.max(Double.MIN_NORMAL, moved.ratio(moved.heldShutAt(at, Optional.empty()))))
                })
                .get(0);
        return changes.entrySet().stream()
                .filter(entry -> entry.getValue() != 0)
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> entry) -> -Math.abs(entry.getValue())))
                .limit(STRONGEST)
                .map(Map.Entry::getKey)
                .toList();
    }
}
