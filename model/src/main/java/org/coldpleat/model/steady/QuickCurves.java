package org.coldpleat.model.steady;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.resolve.input.NamedTemperature;

/**
 * All candidates in one state without bands: what can be shown while a value is still being changed.
 *
 * @param title of the case
 * @param invented true if the data are invented
 * @param state name of the state
 * @param from coldest oil temperature [K]
 * @param to warmest [K]
 * @param named oil temperatures the reader wants to see by name
 * @param candidates in the order of the case
 */
public record QuickCurves(
        String title,
        boolean invented,
        String state,
        double from,
        double to,
        List<NamedTemperature> named,
        List<Candidate> candidates) {
    public QuickCurves {
        named = List.copyOf(named);
        candidates = List.copyOf(candidates);
    }

    /**
     * One candidate.
     *
     * @param name of the candidate
     * @param curve the whole range
     * @param intervals open intervals of oil temperature, each {low, high} [K]
     * @param openingPressure of the valve that opens first [Pa]; empty without a valve
     */
    public record Candidate(String name, StateCurve curve, List<double[]> intervals, OptionalDouble openingPressure) {
        public Candidate {
            intervals = List.copyOf(intervals);
        }
    }
}
