package org.coldpleat.model.coldstart.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which start is wanted.
 *
 * @param candidate one candidate; all of them if empty
 * @param schedule name of a schedule of the case; the first one if empty
 * @param state name of a state of the engine held for the time of the first schedule, in place of a schedule
 * @param from temperature of oil, metal and filter before the start [K]; that of the case if empty
 * @param ambient air temperature [K]; if empty that of the case, or {@code from} where that is given
 */
public record ColdStartRequest(
        Optional<String> candidate,
        Optional<String> schedule,
        Optional<String> state,
        OptionalDouble from,
        OptionalDouble ambient) {
    /** The start as the case has it, of all candidates. */
    public static final ColdStartRequest AS_STATED = new ColdStartRequest(
            Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public ColdStartRequest {
        Objects.requireNonNull(candidate, "candidate");
        if (schedule.isPresent() && state.isPresent()) {
            throw new IllegalArgumentException("schedule " + schedule.get() + " and state " + state.get()
                    + " were both given; one of them must be empty");
        }
    }
}
