package org.coldpleat.model.certainty;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.coldpleat.model.coldstart.Peak;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.StartModel;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.shared.source.Source;

/**
 * First-order bands of a start: each unknown in turn is moved one standard uncertainty up and down and the start computed
 * anew. The unknowns of the start itself are all taken; of those of oil, engine and filter the few that move the steady
 * answer at the start temperature most.
 */
@Source("JCGM 100:2008 (GUM), 5.1.3 note 2; the sides kept apart: derived here")
public final class StartBands {
    private static final int STRONGEST = 8;
    private static final List<StartQuantity> QUANTITIES = List.of(StartQuantity.values());
    private static final List<FilterPart> PARTS = List.of(FilterPart.values());

    private final ResolvedCase resolved;
    private final Variants variants;
    private final StartPlan plan;
    private final int position;
    private final Set<String> own;
    private final List<String> paths;

    public StartBands(ResolvedCase resolved, Variants variants, StartPlan plan, int position) {
        this.resolved = resolved;
        this.variants = variants;
        this.plan = plan;
        this.position = position;
        own = plan.unknowns(position).keySet();
        paths = Stream.concat(own.stream(), strongest().stream()).toList();
    }

    /** Number of starts that are computed: one with each unknown moved up and down, and one with none moved. */
    public int starts() {
        return 2 * paths.size() + 1;
    }

    /** The start of the candidate with its bands; nothing if cancelled. */
    public Optional<ColdStartCandidate> candidate(Counted counted) {
        StartUpResult[] starts = new StartUpResult[starts()];
        if (!counted.each(starts.length, i -> starts[i] = start(i))) {
            return Optional.empty();
        }
        StartUpResult best = starts[0];
        double[][] ends = Stream.of(starts).skip(1).map(StartBands::outputs).toArray(double[][]::new);
        double[] value = outputs(best);
        StartBand[] bands = new StartBand[value.length];
        for (int k = 0; k < value.length; k++) {
            bands[k] = band(value[k], ends, k);
        }
        Map<StartQuantity, StartBand> quantities = new EnumMap<>(StartQuantity.class);
        for (int k = 0; k < QUANTITIES.size(); k++) {
            quantities.put(QUANTITIES.get(k), bands[k]);
        }
        List<ColdStartCandidate.PartPeak> parts = new ArrayList<>();
        for (int k = 0; k < PARTS.size(); k++) {
            Peak peak = best.partPeaks().get(PARTS.get(k));
            if (peak != null && peak.value() > 0) {
                parts.add(new ColdStartCandidate.PartPeak(
                        PARTS.get(k).name(), bands[QUANTITIES.size() + k], peak.time()));
            }
        }
        BuiltCandidate built = resolved.candidates().get(position);
        return Optional.of(new ColdStartCandidate(
                built.name(), plan.hasValve(built), best, quantities, parts, byWorth(paths, ends, value)));
    }

    /** Start i: the best values first, then each unknown moved up and down. */
    private StartUpResult start(int i) {
        return i == 0
                ? StartUp.run(plan.spec(resolved.shared(), resolved.candidates().get(position), position, plan.model()))
                : moved(paths.get((i - 1) / 2), i % 2 == 1 ? 1 : -1);
    }

    /** Unknowns by how far they move the open time. */
    private static List<String> byWorth(List<String> paths, double[][] ends, double[] value) {
        Map<String, Double> worth = new LinkedHashMap<>();
        for (int i = 0; i < paths.size(); i++) {
            worth.put(
                    paths.get(i),
                    Math.max(Math.abs(ends[2 * i][0] - value[0]), Math.abs(ends[2 * i + 1][0] - value[0])));
        }
        return paths.stream()
                .sorted(Comparator.comparingDouble((String path) -> -worth.get(path)))
                .toList();
    }

    /** Band of output k. Where a moved start never gets there the side is open; NaN without a best value. */
    private static StartBand band(double value, double[][] ends, int k) {
        if (Double.isNaN(value)) {
            return new StartBand(value, value, value);
        }
        double below = 0;
        double above = 0;
        for (int i = 0; i < ends.length; i += 2) {
            double one = change(value, ends[i][k]);
            double other = change(value, ends[i + 1][k]);
            double up = Math.max(0, Math.max(one, other));
            double down = Math.min(0, Math.min(one, other));
            below += down * down;
            above += up * up;
        }
        double low = Double.isInfinite(value) ? finiteLow(ends, k, value) : value - COVERAGE_95 * Math.sqrt(below);
        return new StartBand(value, Math.max(0, low), value + COVERAGE_95 * Math.sqrt(above));
    }

    private static double change(double value, double end) {
        return Double.isNaN(end) || end == value ? 0 : end - value;
    }

    /** With a best value out of reach, the nearest moved start that gets there. */
    private static double finiteLow(double[][] ends, int k, double value) {
        double low = value;
        for (double[] end : ends) {
            low = Double.isNaN(end[k]) ? low : Math.min(low, end[k]);
        }
        return low;
    }

    /** All quantities, then the greatest drop of all parts; NaN where a start could not be computed. */
    private static double[] outputs(StartUpResult result) {
        double[] found = new double[QUANTITIES.size() + PARTS.size()];
        for (int k = 0; k < QUANTITIES.size(); k++) {
            found[k] = QUANTITIES.get(k).of(result);
        }
        for (int k = 0; k < PARTS.size(); k++) {
            Peak peak = result.partPeaks().get(PARTS.get(k));
            found[QUANTITIES.size() + k] = peak == null || !result.status().isAnswer() ? Double.NaN : peak.value();
        }
        return found;
    }

    private StartUpResult moved(String path, double deviations) {
        BuiltCandidate built = resolved.candidates().get(position);
        if (own.contains(path)) {
            Unknown unknown = plan.unknowns(position).get(path);
            StartModel model = plan.moving(Map.of(path, unknown.moved(deviations)));
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
        if (!plan.hasValve(resolved.candidates().get(position))) {
            return List.of();
        }
        double at = plan.model().from();
        Map<String, Double> changes = variants.contributions(position, plan.longestPhase(), 1, moved -> new double[] {
                    Math.log(Math.max(Double.MIN_NORMAL, moved.heldShutSolver().ratioAt(at)))
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
