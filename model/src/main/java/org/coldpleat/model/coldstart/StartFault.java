package org.coldpleat.model.coldstart;

import java.util.List;
import java.util.Objects;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Shown;

/**
 * What is wrong with a start schedule and where.
 *
 * @param kind what is wrong
 * @param phase index of the phase from 0; -1 for the schedule as a whole
 * @param value the offending number in SI
 */
public record StartFault(Kind kind, int phase, double value) {
    /** What can be wrong. The code is the key of the text in the notice bundle. */
    public enum Kind {
        /** No phase at all. */
        NO_PHASES("start.fault.noPhases"),
        /** A duration that is no number, zero or below. */
        DURATION_NOT_POSITIVE("start.fault.durationNotPositive"),
        /** A phase without end that is not the last one. */
        ENDLESS_BEFORE_LAST("start.fault.endlessBeforeLast"),
        /** A speed below zero or not finite. */
        SPEED_NEGATIVE("start.fault.speedNegative"),
        /** Heat that is not finite or below zero. */
        HEAT_NEGATIVE("start.fault.heatNegative"),
        /** The pump stands still in every phase. */
        NEVER_TURNS("start.fault.neverTurns");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /** Key of the text in the notice bundle. */
        public String code() {
            return code;
        }
    }

    public StartFault {
        Objects.requireNonNull(kind, "kind");
    }

    /** The fault as a notice about a place, such as {@code start schedule, phase 2}. */
    public Notice at(String place) {
        return new Notice(
                kind.code(),
                Severity.WARNING,
                place,
                Shown.words(List.of(Integer.toString(phase + 1), Double.toString(value))));
    }
}
