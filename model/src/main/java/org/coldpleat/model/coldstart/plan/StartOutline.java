package org.coldpleat.model.coldstart.plan;

import java.util.List;

/**
 * What a start of a case can be asked.
 *
 * @param schedules names of the schedules; the first one is taken unless another is asked for
 * @param states names of the states of the engine
 * @param from temperature before the start [K]
 * @param ambient [K]
 * @param hot oil temperature that counts as hot [K]
 * @param logged true if a logged oil temperature stands in for the heat balance; such a start cannot be swept or moved
 */
public record StartOutline(
        List<String> schedules, List<String> states, double from, double ambient, double hot, boolean logged) {
    public StartOutline {
        schedules = List.copyOf(schedules);
        states = List.copyOf(states);
    }
}
