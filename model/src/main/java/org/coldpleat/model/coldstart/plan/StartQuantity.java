package org.coldpleat.model.coldstart.plan;

import java.util.OptionalDouble;
import org.coldpleat.model.coldstart.StartUpResult;

/** What a start amounts to, one number each. */
public enum StartQuantity {
    /** Time with a bypass valve open, fill stage included [s]. */
    OPEN_SECONDS,
    /** The part of it while the empty passages fill [s]. */
    OPEN_SECONDS_FILLING,
    /** The part of it from then on [s]. */
    OPEN_SECONDS_AFTER,
    /** Oil round the medium [m3]. */
    UNFILTERED,
    /** The part of it while the empty passages fill [m3]. */
    UNFILTERED_FILLING,
    /** The part of it from then on [m3]. */
    UNFILTERED_AFTER,
    /** Oil through the medium [m3]. */
    FILTERED,
    /** Oil delivered by the pump, relief flow included [m3]. */
    PUMPED,
    /** Greatest pressure drop of the whole filter [Pa]. */
    PEAK_DROP,
    /** Time after which no bypass valve is open any more [s]; 0 if none opens, infinite if one is open at the end. */
    CLOSING_TIME,
    /** Time until the oil is hot as stated [s]; infinite if not within the time looked at. */
    HOT_TIME;

    public double of(StartUpResult start) {
        if (!start.status().isAnswer()) {
            return Double.NaN;
        }
        return switch (this) {
            case OPEN_SECONDS -> start.total().openSeconds();
            case OPEN_SECONDS_FILLING -> start.fill().openSeconds();
            case OPEN_SECONDS_AFTER -> start.connected().openSeconds();
            case UNFILTERED -> start.total().unfilteredVolume();
            case UNFILTERED_FILLING -> start.fill().unfilteredVolume();
            case UNFILTERED_AFTER -> start.connected().unfilteredVolume();
            case FILTERED -> start.total().filteredVolume();
            case PUMPED -> start.total().pumpedVolume();
            case PEAK_DROP -> start.filterDropPeak().value();
            case CLOSING_TIME -> closing(start);
            case HOT_TIME -> later(start.hotTime());
        };
    }

    private static double closing(StartUpResult start) {
        return start.openAtEnd()
                ? Double.POSITIVE_INFINITY
                : start.closingTime().orElse(0);
    }

    private static double later(OptionalDouble time) {
        return time.orElse(Double.POSITIVE_INFINITY);
    }
}
