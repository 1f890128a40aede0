package org.coldpleat.model.certainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.steady.StateModel;

/**
 * The models of a case with one unknown at a time moved by one standard uncertainty up and down, for first-order
 * propagation (JCGM 100:2008, 5.1.3 note 2). Built once, used for every operating state.
 */
public final class Variants {
    private final ResolvedCase resolved;
    private final List<Moved<SharedModel>> shared = new ArrayList<>();
    private final List<List<Moved<BuiltCandidate>>> own = new ArrayList<>();

    /**
     * A model with one unknown moved.
     *
     * @param path path of the unknown
     * @param up model with it moved up
     * @param down model with it moved down; the unmoved one if the true value can only lie above
     * @param span standard uncertainties between the two [1]
     */
    record Moved<T>(String path, T up, T down, double span) {}

    public Variants(ResolvedCase resolved) {
        this.resolved = resolved;
        for (Unknown unknown : resolved.sharedUnknowns().values()) {
            SharedModel up = resolved.sharedMoving(Map.of(unknown.path(), unknown.moved(1)));
            SharedModel down = unknown.upwardOnly()
                    ? resolved.shared()
                    : resolved.sharedMoving(Map.of(unknown.path(), unknown.moved(-1)));
            shared.add(new Moved<>(unknown.path(), up, down, unknown.upwardOnly() ? 1 : 2));
        }
        for (int i = 0; i < resolved.candidates().size(); i++) {
            own.add(ownOf(i));
        }
    }

    private List<Moved<BuiltCandidate>> ownOf(int position) {
        List<Moved<BuiltCandidate>> moved = new ArrayList<>();
        for (Unknown unknown : resolved.ownUnknowns(position).values()) {
            BuiltCandidate up = resolved.candidateMoving(position, Map.of(unknown.path(), unknown.moved(1)));
            BuiltCandidate down = unknown.upwardOnly()
                    ? resolved.candidates().get(position)
                    : resolved.candidateMoving(position, Map.of(unknown.path(), unknown.moved(-1)));
            moved.add(new Moved<>(unknown.path(), up, down, unknown.upwardOnly() ? 1 : 2));
        }
        return List.copyOf(moved);
    }

    /** Several values computed from one candidate in one operating state. */
    public interface Quantities {
        double[] of(StateModel model);
    }

    /**
     * Changes of several quantities for one standard uncertainty of each unknown: one map from path to change for each
     * quantity. Paths of shared unknowns are the same for every candidate.
     */
    public List<Map<String, Double>> contributions(
            int position, OperatingState operatingState, int count, Quantities quantities) {
        List<Map<String, Double>> contributions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            contributions.add(new LinkedHashMap<>());
        }
        BuiltCandidate candidate = resolved.candidates().get(position);
        for (Moved<SharedModel> moved : shared) {
            put(
                    contributions,
                    moved.path(),
                    quantities.of(new StateModel(moved.up(), candidate.filter(), operatingState)),
                    quantities.of(new StateModel(moved.down(), candidate.filter(), operatingState)),
                    moved.span());
        }
        for (Moved<BuiltCandidate> moved : own.get(position)) {
            put(
                    contributions,
                    moved.path(),
                    quantities.of(new StateModel(resolved.shared(), moved.up().filter(), operatingState)),
                    quantities.of(new StateModel(resolved.shared(), moved.down().filter(), operatingState)),
                    moved.span());
        }
        return contributions;
    }

    private static void put(
            List<Map<String, Double>> contributions, String path, double[] up, double[] down, double span) {
        for (int i = 0; i < contributions.size(); i++) {
            contributions.get(i).put(path, (up[i] - down[i]) / span);
        }
    }

    /** Same for a quantity of the sheet alone, which no shared unknown moves. */
    public Map<String, Double> ownContributions(int position, ToDoubleFunction<BuiltCandidate> quantity) {
        Map<String, Double> contributions = new LinkedHashMap<>();
        for (Moved<BuiltCandidate> moved : own.get(position)) {
            contributions.put(
                    moved.path(),
                    (quantity.applyAsDouble(moved.up()) - quantity.applyAsDouble(moved.down())) / moved.span());
        }
        return contributions;
    }

    /** Standard uncertainty from contributions. */
    public static double norm(Map<String, Double> contributions) {
        double square = 0;
        for (double contribution : contributions.values()) {
            square += contribution * contribution;
        }
        return Math.sqrt(square);
    }

    /** Standard uncertainty of the difference of two quantities whose shared unknowns cancel. */
    public static double normOfDifference(Map<String, Double> first, Map<String, Double> second) {
        double square = 0;
        for (Map.Entry<String, Double> entry : first.entrySet()) {
            double difference = entry.getValue() - second.getOrDefault(entry.getKey(), 0.0);
            square += difference * difference;
        }
        for (Map.Entry<String, Double> entry : second.entrySet()) {
            if (!first.containsKey(entry.getKey())) {
                square += entry.getValue() * entry.getValue();
            }
        }
        return Math.sqrt(square);
    }
}
