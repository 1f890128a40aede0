package org.coldpleat.model.certainty;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.steady.StateCurve;

/**
 * The bypass answer for one candidate in one state.
 *
 * @param setting {@code engine} or {@code flowStand}
 * @param state name of the state
 * @param answer how the open temperatures lie in the range
 * @param intervals open intervals of oil temperature, each {low, high} [K]
 * @param openingTemperature upper end of the cold open interval with its band [K]; empty for never, always, no valve
 * @param greatestRatio greatest valve difference over opening pressure in the range, with its band [1]; 0 without valve
 * @param greatestRatioAt oil temperature of that greatest ratio [K]
 * @param fixedFlowOpening oil temperature below which the valve would open if the whole pump displacement went through
 *     the filter however cold [K]; NaN if it would not, on a stand, or without a valve
 * @param chanceOpen chance that the valve opens anywhere in the range [1], first order
 * @param shares bypass share at the named temperatures
 * @param curve the whole range, for charts
 */
public record StateResult(
        String setting,
        String state,
        Answer answer,
        List<double[]> intervals,
        Optional<OpeningBand> openingTemperature,
        Band greatestRatio,
        double greatestRatioAt,
        double fixedFlowOpening,
        double chanceOpen,
        List<ShareAt> shares,
        StateCurve curve) {
    /** How the open temperatures lie in the range. */
    public enum Answer {
        /** The valve stays shut over the whole range. */
        NEVER,
        /** Open over the whole range. */
        ALWAYS,
        /** One cold half-line: open below one temperature. */
        BELOW,
        /** Anything else: one warm interval or several. */
        INTERVALS,
        /** No bypass valve anywhere. */
        NO_VALVE,
        /** The circuit gave no converged answer over part of the range. */
        UNRESOLVED
    }

    public StateResult {
        intervals = List.copyOf(intervals);
        shares = List.copyOf(shares);
    }

    /**
     * Bypass share at a named temperature.
     *
     * @param name name of the temperature
     * @param temperature [K]
     * @param share share of the filter's oil that goes round the medium, with its band [1]
     * @param pressureDrop drop of the whole filter [Pa]
     * @param status status of the operating point
     */
    public record ShareAt(String name, double temperature, Band share, double pressureDrop, String status) {}
}
