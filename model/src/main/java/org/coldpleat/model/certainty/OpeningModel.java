package org.coldpleat.model.certainty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.coldpleat.model.certainty.draw.Model;

/**
 * The opening temperature of one candidate in one state alone [K].
 *
 * @param draws case
 * @param unknowns all unknowns of the case, in the order of the values
 * @param candidate position of the candidate
 * @param state position of the state
 */
record OpeningModel(CaseDraws draws, List<org.coldpleat.model.resolve.input.Unknown> unknowns, int candidate, int state)
        implements Model {
    @Override
    public double[] answers(double[] values) {
        return inRow().answers(values);
    }

    @Override
    public Model inRow() {
        Remembering<CaseDraws.Common> commons = new Remembering<>(draws::common);
        Remembering<CaseDraws.Candidate> own = new Remembering<>(moved -> draws.candidate(candidate, moved));
        return values -> {
            Optional<CaseDraws.Common> common = commons.of(part(values, -1));
            return new double[] {
                common.flatMap(shared -> own.of(part(values, candidate)).map(shared::with))
                        .map(one -> one.opening(state))
                        .orElse(Double.NaN)
            };
        };
    }

    /** Values of the unknowns of an owner by path: a candidate, or -1 for what all share. */
    private Map<String, Double> part(double[] values, int owner) {
        Map<String, Double> part = new HashMap<>();
        for (int j = 0; j < values.length; j++) {
            org.coldpleat.model.resolve.input.Unknown unknown = unknowns.get(j);
            if (unknown.candidate() == owner) {
                part.put(unknown.path(), values[j]);
            }
        }
        return part;
    }

    /** Builds from values, and keeps what the first two calls built. Used by one thread. */
    private static final class Remembering<T> {
        private static final int KEPT = 2;

        private final Function<Map<String, Double>, Optional<T>> build;
        private final List<Map<String, Double>> values = new ArrayList<>(KEPT);
        private final List<Optional<T>> built = new ArrayList<>(KEPT);

        Remembering(Function<Map<String, Double>, Optional<T>> build) {
            this.build = build;
        }

        Optional<T> of(Map<String, Double> wanted) {
            int known = values.indexOf(wanted);
            if (known >= 0) {
                return built.get(known);
            }
            Optional<T> found = build.apply(wanted);
            if (values.size() < KEPT) {
                values.add(wanted);
                built.add(found);
            }
            return found;
        }
    }
}
