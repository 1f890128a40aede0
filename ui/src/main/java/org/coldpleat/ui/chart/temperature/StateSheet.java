package org.coldpleat.ui.chart.temperature;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * All candidates of one state, for the two charts over oil temperature.
 *
 * @param title title of the case
 * @param state name of the state
 * @param invented true if the data are invented, which the charts then say
 * @param from coldest oil temperature [K]
 * @param to warmest [K]
 * @param named temperatures to mark by name
 * @param candidates one curve a candidate
 */
public record StateSheet(
        String title,
        String state,
        boolean invented,
        double from,
        double to,
        List<Named> named,
        List<CandidateCurve> candidates) {
    public StateSheet {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(state, "state");
        named = List.copyOf(named);
        candidates = List.copyOf(candidates);
        if (!(from < to)) {
            throw new IllegalArgumentException("from must be below to [K], were " + from + " and " + to);
        }
    }

    /**
     * A temperature with a name.
     *
     * @param name such as {@code winter start}
     * @param temperature [K]
     */
    public record Named(String name, double temperature) {}

    /** The same sheet without some of its candidates; the others keep their looks. */
    public StateSheet without(Set<String> names) {
        return new StateSheet(
                title,
                state,
                invented,
                from,
                to,
                named,
                candidates.stream().filter(one -> !names.contains(one.name())).toList());
    }
}
