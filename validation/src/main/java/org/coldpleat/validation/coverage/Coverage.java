package org.coldpleat.validation.coverage;

import java.util.List;
import java.util.Map;

/**
 * What the experiment found.
 *
 * @param openings bands of all opening temperatures; never counts as below everything
 * @param opened those of valves that truly open within the range
 * @param byEvidence those of valves that truly open, by what the resistance of the medium rests on
 * @param byState the same by state
 * @param firstOrder bands of the comparison, of valves that truly open, where it gives a band
 * @param resistance bands of the medium resistance
 * @param pairs stated chance that the first filter opens in warmer oil, by tenths
 */
public record Coverage(
        Tally openings,
        Tally opened,
        Map<String, Tally> byEvidence,
        Map<String, Tally> byState,
        Tally firstOrder,
        Tally resistance,
        List<Tenth> pairs) {
    /**
     * Pairs whose stated chance lies in one tenth.
     *
     * @param stated mean stated chance [1]
     * @param found share in which the first truly opens warmer [1]
     * @param count number of pairs
     */
    public record Tenth(double stated, double found, int count) {
        /** Standard deviation of {@code found} if the stated chances were right [1]. */
        public double error() {
            return Math.sqrt(Math.max(stated * (1 - stated), 1e-4) / count);
        }
    }
}
