package org.coldpleat.model.certainty;

import java.util.List;

/**
 * Bands of a case and its pairs, not taken apart.
 *
 * @param temperature oil temperatures of the open-probability curves [K]
 * @param outcomes one a state and candidate, by state
 * @param pairs how often one candidate opens warmer than another
 */
public record DrawnBands(
        double[] temperature, List<ConfidenceResult.StateOutcome> outcomes, List<ConfidenceResult.Warmer> pairs) {
    public DrawnBands {
        outcomes = List.copyOf(outcomes);
        pairs = List.copyOf(pairs);
    }
}
