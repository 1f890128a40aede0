package org.coldpleat.model.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.Variants;

/** Puts the candidates of one operating state in order and says which of them can be told apart. */
final class Ranking {
    /** Standard uncertainties between two values from which they count as separated [1] (about 95 %). */
    static final double SEPARATED = 2;

    /** Opening first, at the warmest oil, comes first; then by how near the valve comes to opening in the cold. */
    private static final Comparator<StateAnalysis> EARLIEST_FIRST = Comparator.comparingDouble(Ranking::openingOrNone)
            .thenComparingDouble(StateAnalysis::coldest)
            .reversed();

    private Ranking() {}

    private static double openingOrNone(StateAnalysis analysis) {
        return switch (analysis.result().answer()) {
            case ALWAYS -> Double.POSITIVE_INFINITY;
            case BELOW -> analysis.result().openingTemperature().orElseThrow().value();
            default -> Double.NEGATIVE_INFINITY;
        };
    }

    /** Candidates with a valve in this operating state, the one that opens at the warmest oil first. */
    static List<StateAnalysis> ordered(List<StateAnalysis> operatingState) {
        return operatingState.stream()
                .filter(one -> one.result().answer() != StateResult.Answer.NO_VALVE)
                .sorted(EARLIEST_FIRST)
                .toList();
    }

    /**
     * How far two candidates of one operating state are apart.
     *
     * @param kelvins difference of the opening temperatures [K]; NaN if one of them has none
     * @param logRatio difference of the logarithms of the ratio of valve difference to opening pressure [1]
     * @param deviations difference over its standard uncertainty, shared unknowns cancelled [1]
     */
    record Gap(double kelvins, double logRatio, double deviations) {
        boolean separated() {
            return Math.abs(deviations) > SEPARATED;
        }
    }

    /** Gap from one candidate to another that opens colder. */
    static Gap gap(StateAnalysis first, StateAnalysis second) {
        boolean both = first.result().openingTemperature().isPresent()
                && second.result().openingTemperature().isPresent();
        double logRatio = first.coldest() - second.coldest();
        if (both && first.logSlope() != 0 && second.logSlope() != 0) {
            double kelvins = first.reference() - second.reference();
            double spread = Variants.normOfDifference(
                    scaled(first.contributions(), -1 / first.logSlope()),
                    scaled(second.contributions(), -1 / second.logSlope()));
            return new Gap(kelvins, logRatio, over(kelvins, spread));
        }
        double spread = Variants.normOfDifference(first.coldestContributions(), second.coldestContributions());
        return new Gap(Double.NaN, logRatio, over(logRatio, spread));
    }

    private static double over(double difference, double spread) {
        return difference == 0 ? 0 : difference / spread;
    }

    private static Map<String, Double> scaled(Map<String, Double> contributions, double factor) {
        return contributions.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> factor * entry.getValue()));
    }
}
