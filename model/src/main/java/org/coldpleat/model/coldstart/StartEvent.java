package org.coldpleat.model.coldstart;

import java.util.Objects;

/**
 * Something that happened during a start.
 *
 * @param time [s]
 * @param kind what happened
 * @param which index of the relief valve or of the phase begun; 0 for a valve in the element and 1 for one in the block
 * @param oilTemperature [K]
 * @param pumpPressure just after [Pa]
 * @param galleryPressure just after [Pa]
 * @param valveDifference across the leading bypass valve just after [Pa]
 */
public record StartEvent(
        double time,
        Kind kind,
        int which,
        double oilTemperature,
        double pumpPressure,
        double galleryPressure,
        double valveDifference) {
    /** What can happen. */
    public enum Kind {
        /** A phase of the schedule begins. */
        PHASE,
        /** The gallery is full; pressure stands in it from now on. */
        GALLERY_FILLED,
        /** A bypass valve opens. */
        VALVE_OPENS,
        /** A bypass valve shuts. */
        VALVE_CLOSES,
        /** The difference across a valve came to its opening pressure and fell back without opening it. */
        VALVE_TOUCHED,
        /** The lid of a bypass valve reaches its stop. */
        FULL_LIFT,
        /** The lid of a bypass valve leaves its stop. */
        BELOW_FULL_LIFT,
        /** A relief valve opens. */
        RELIEF_OPENS,
        /** A relief valve shuts. */
        RELIEF_CLOSES,
        /** The oil reaches the stated hot temperature. */
        HOT_REACHED
    }

    public StartEvent {
        Objects.requireNonNull(kind, "kind");
    }
}
