package org.coldpleat.ui.chart.temperature;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the charts show of one candidate in one state. SI throughout.
 *
 * @param index place of the candidate in the case, from 0; fixes color, dash and marker
 * @param name name of the candidate
 * @param temperature oil temperatures [K], rising
 * @param valveDifference what the faces of the bypass valve see [Pa]; NaN where not known
 * @param bypassShare share of the oil that goes round the medium [1]; NaN where not known
 * @param openingPressure opening pressure [Pa]; empty without a valve
 * @param openings temperatures at which the valve opens or shuts [K]
 */
public record CandidateCurve(
        int index,
        String name,
        double[] temperature,
        double[] valveDifference,
        double[] bypassShare,
        Optional<Span> openingPressure,
        List<Span> openings) {
    public CandidateCurve {
        Objects.requireNonNull(name, "name");
        openings = List.copyOf(openings);
        if (valveDifference.length != temperature.length || bypassShare.length != temperature.length) {
            throw new IllegalArgumentException("arrays of " + name + " must have equal length, were "
                    + temperature.length + ", " + valveDifference.length + ", " + bypassShare.length);
        }
    }
}
