package org.coldpleat.model.certainty;

import java.util.List;
import java.util.Map;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.StateModel;

/**
 * Everything found out about one candidate in one operating state, with what ranking and verdict need beside the public result.
 *
 * @param position of the candidate
 * @param operatingState operatingState
 * @param model candidate in the operating state, nothing moved
 * @param result public result
 * @param reference oil temperature at which the contributions are taken [K]: the opening temperature, or where the ratio
 *     of valve difference to opening pressure is greatest
 * @param logRatio natural logarithm of that ratio there [1]
 * @param logSlope its slope over temperature there [1/K]
 * @param contributions change of that logarithm for one standard uncertainty of each unknown, by path
 * @param starvedUpTo warmest oil temperature of the range at which the gallery is starved [K]; NaN if at none
 * @param suctionLimitedUpTo warmest at which the pickup limits the pump [K]; NaN if at none
 * @param coldest logarithm of the ratio at the coldest named temperature [1]
 * @param coldestContributions its changes, by path
 */
public record StateAnalysis(
        int position,
        OperatingState operatingState,
        StateModel model,
        StateResult result,
        double reference,
        double logRatio,
        double logSlope,
        Map<String, Double> contributions,
        double starvedUpTo,
        double suctionLimitedUpTo,
        double coldest,
        Map<String, Double> coldestContributions) {
    public StateAnalysis {
        contributions = Map.copyOf(contributions);
        coldestContributions = Map.copyOf(coldestContributions);
    }

    /** Standard uncertainty of the logarithm of the ratio at the reference [1]. */
    public double sigma() {
        return Variants.norm(contributions);
    }

    /** Chance that the valve is open at the coldest named temperature [1], first order. */
    public double chanceOpenWhenColdest() {
        return Chance.above(coldest, Variants.norm(coldestContributions));
    }

    /** The unknowns that move the ratio most, strongest first. */
    public List<String> strongest(int count) {
        return contributions.entrySet().stream()
                .filter(entry -> Math.abs(entry.getValue()) > 0)
                .sorted((a, b) -> {
                    int bySize = Double.compare(Math.abs(b.getValue()), Math.abs(a.getValue()));
                    return bySize != 0 ? bySize : a.getKey().compareTo(b.getKey());
                })
                .limit(count)
                .map(Map.Entry::getKey)
                .toList();
    }
}
