package org.coldpleat.model.certainty;

import java.util.List;

/**
 * Headline numbers of one candidate in one state for one set of values of the unknowns.
 *
 * @param opening warmest oil temperature at which the valve is open [K]; negative infinity for never, positive infinity
 *     for open at the warm end of the range, NaN for no answer
 * @param ratios valve difference over opening pressure with the valve held shut, at the named temperatures [1]
 * @param shares bypass share at the named temperatures [1]
 * @param hotDrop drop of the whole filter at the warmest named temperature [Pa]
 */
public record DrawnState(double opening, List<Double> ratios, List<Double> shares, double hotDrop) {
    public DrawnState {
        ratios = List.copyOf(ratios);
        shares = List.copyOf(shares);
    }
}
