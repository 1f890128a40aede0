package org.coldpleat.ui.desktop.viewmodel;

import java.util.function.BiFunction;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.shared.quantity.Kind;

/**
 * A value of a case that can be tried out by a slider. SI throughout.
 *
 * @param key by which its words are found
 * @param kind of the value
 * @param base value of the case
 * @param low where the slider begins
 * @param high where it ends
 * @param kept true if a candidate that is kept takes the value along
 * @param turn adds to a change so many times the base [1]
 */
public record Knob(
        String key,
        Kind kind,
        double base,
        double low,
        double high,
        boolean kept,
        BiFunction<CandidateChange, Double, CandidateChange> turn) {
    public Knob {
        if (!(low <= base && base <= high && low < high)) {
            throw new IllegalArgumentException(
                    "base of " + key + " must lie between low and high, were " + base + ", " + low + ", " + high);
        }
    }

    /** A change with the knob at a value [SI]. */
    CandidateChange change(CandidateChange before, double value) {
        return turn.apply(before, value / base);
    }
}
