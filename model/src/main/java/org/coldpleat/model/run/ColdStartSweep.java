package org.coldpleat.model.run;

import java.util.List;
import org.coldpleat.model.coldstart.StartSweep;

/**
 * Starts of all candidates from a range of temperatures, everything soaked through.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param schedule name of the schedule or of the state held
 * @param candidates one sweep each, in the order of the case
 */
public record ColdStartSweep(
        String title, boolean invented, String digest, String schedule, List<Candidate> candidates) {
    /**
     * The sweep of one candidate.
     *
     * @param name name
     * @param sweep rows by start temperature
     */
    public record Candidate(String name, StartSweep sweep) {}

    public ColdStartSweep {
        candidates = List.copyOf(candidates);
    }
}
