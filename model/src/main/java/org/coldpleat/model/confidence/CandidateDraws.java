package org.coldpleat.model.confidence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.coldpleat.model.run.CaseDraws;
import org.coldpleat.model.run.ResolvedCase;

/**
 * Draws of everything one candidate depends on. The same case, candidate and seed give the same draws, so that one draw
 * can be put to one design after another. Immutable.
 */
public final class CandidateDraws {
    private final List<UncertainQuantity> unknowns;
    private final SobolDraws sequence;

    /**
     * Draws of a candidate.
     *
     * @param resolved case
     * @param candidate position of the candidate
     * @param further unknowns beside those of the case
     * @param seed same seed, same draws
     */
    public CandidateDraws(ResolvedCase resolved, int candidate, List<UncertainQuantity> further, long seed) {
        Stream<UncertainQuantity> own = new CaseDraws(resolved)
                .unknowns().stream()
                        .filter(one -> one.shared() || one.candidate() == candidate)
                        .map(CaseModel::unknown);
        unknowns = Stream.concat(own, further.stream()).toList();
        sequence = new SobolDraws(Math.max(1, unknowns.size()), seed);
    }

    /**
     * Values of one draw, by the names of the unknowns [SI].
     *
     * @param index number of the draw, at least 0
     */
    public Map<String, Double> values(int index) {
        double[] point = sequence.point(index);
        Map<String, Double> values = new HashMap<>();
        for (int j = 0; j < unknowns.size(); j++) {
            values.put(unknowns.get(j).name(), unknowns.get(j).quantile(point[j]));
        }
        return values;
    }
}
