package org.coldpleat.model.confidence;

import java.util.List;

/**
 * How sure the answers of a case are.
 *
 * @param title title of the case
 * @param digest digest of the inputs
 * @param draws number of draws
 * @param seed of the draws
 * @param temperature oil temperatures of the open-probability curves [K]
 * @param outcomes one a state and candidate, by state
 * @param pairs how often one candidate opens warmer than another
 * @param focus the closest call taken apart
 * @param verified comparison of the quick search with the full one
 */
public record ConfidenceResult(
        String title,
        String digest,
        int draws,
        long seed,
        double[] temperature,
        List<StateOutcome> outcomes,
        List<Warmer> pairs,
        Focus focus,
        Verified verified) {
    public ConfidenceResult {
        outcomes = List.copyOf(outcomes);
        pairs = List.copyOf(pairs);
    }

    /**
     * One candidate in one state.
     *
     * @param candidate name
     * @param state name
     * @param opening warmest open temperature [K]
     * @param chanceOpen chance that the valve opens anywhere in the range [1]
     * @param unanswered draws without an answer or that no filter can have
     * @param openProbability chance that the valve opens in warmer oil than each temperature of the curve [1]
     * @param ratios valve difference over opening pressure, held shut, at the named temperatures [1]
     * @param shares bypass share at the named temperatures [1]
     * @param hotDrop drop of the whole filter at the warmest named temperature [Pa]
     * @param mediumResistance [1/m]
     */
    public record StateOutcome(
            String candidate,
            String state,
            Quantiles opening,
            double chanceOpen,
            int unanswered,
            double[] openProbability,
            List<Quantiles> ratios,
            List<Quantiles> shares,
            Quantiles hotDrop,
            Quantiles mediumResistance) {
        public StateOutcome {
            ratios = List.copyOf(ratios);
            shares = List.copyOf(shares);
        }
    }

    /**
     * How often one candidate opens in warmer oil than another over common draws.
     *
     * @param state name
     * @param first name of the first candidate
     * @param second name of the second
     * @param chances shares of the draws
     */
    public record Warmer(String state, String first, String second, Pair chances) {}

    /**
     * The answer that hangs most in the balance, taken apart. Groups are keys of sentences that suggest a measurement,
     * followed by {@code #} and the position of the candidate where the unknowns belong to it.
     *
     * @param candidate name
     * @param state name
     * @param indices shares of the variance of the opening temperature
     * @param measurements possible further measurements, most useful first
     */
    public record Focus(String candidate, String state, SobolIndices indices, List<NextMeasurement.Gain> measurements) {
        public Focus {
            measurements = List.copyOf(measurements);
        }
    }

    /**
     * Agreement of quick and full search.
     *
     * @param compared answers compared
     * @param differing answers that differ by more than 0.05 K
     */
    public record Verified(int compared, int differing) {}
}
