package org.coldpleat.model.certainty;

import java.util.List;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.shared.notice.Notice;

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
 * @param notices findings about the draws
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
        Verified verified,
        List<Notice> notices) {
    public ConfidenceResult {
        notices = List.copyOf(notices);
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
     * @param impossible draws whose values no filter can have together; left out
     * @param unanswered draws whose circuit gave no answer; left out
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
            int impossible,
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
     * @param firstWarmer share of the draws in which the first opens warmer [1]
     * @param equal share in which both open alike, or neither opens [1]
     * @param secondWarmer share in which the second opens warmer [1]
     */
    public record Warmer(
            String state, String first, String second, double firstWarmer, double equal, double secondWarmer) {}

    /**
     * Part of a group of unknowns in the variance of an answer, with standard sampling errors.
     *
     * @param group group
     * @param first share explained by the group alone [1]
     * @param firstError its error [1]
     * @param total share that would remain if all else were known [1]
     * @param totalError its error [1]
     */
    public record Contribution(String group, double first, double firstError, double total, double totalError) {}

    /**
     * What a better measurement of a group would bring.
     *
     * @param group group
     * @param remaining uncertainty afterward over the one now [1]
     * @param spreadNow standard deviation of the opening temperature now [K]
     * @param spreadAfter expected afterward [K]
     * @param error standard sampling error of the difference [K]
     */
    public record Measurement(String group, double remaining, double spreadNow, double spreadAfter, double error) {}

    /**
     * The answer that hangs most in the balance, taken apart. Groups are keys of the words for a measurement,
     * followed by {@code #} and the position of the candidate where the unknowns belong to it.
     *
     * @param candidate name
     * @param state name
     * @param contributions shares of the variance of the opening temperature
     * @param measurements possible further measurements, most useful first
     */
    public record Focus(
            String candidate, String state, List<Contribution> contributions, List<Measurement> measurements) {
        public Focus {
            contributions = List.copyOf(contributions);
            measurements = List.copyOf(measurements);
        }
    }

    /**
     * Agreement of quick and full search.
     *
     * @param compared answers compared
     * @param differing answers that differ by more than 1 mK
     */
    public record Verified(int compared, int differing) {}
}
