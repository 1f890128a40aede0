package org.coldpleat.model.circuit;

/** How the search for an operating point ended. */
public enum SolveStatus {
    /** Balances met. */
    CONVERGED,
    /** The pump stands still: no flow, all pressures 0. */
    NO_FLOW,
    /** Balances not met within the allowed steps; the numbers must not be used. */
    MAX_ITERATIONS,
    /**
     * No steady state: between two neighboring pressures the bearing flow jumps, because oil pressed through the films heats
     * them faster than it carries heat off. Needs tens of megapascals, so a circuit without a working relief valve.
     */
    NO_STEADY_STATE,
    /** The bearing films would be hotter than the oil's law reaches; the numbers must not be used. */
    FILM_TOO_HOT,
    /** The split of the flow between medium and valves was not found; the numbers must not be used. */
    FILTER_NOT_SPLIT,
    /** A law gave no finite number; the numbers must not be used. */
    NOT_FINITE;

    /** Whether the numbers of the point may be used. */
    public boolean isAnswer() {
        return this == CONVERGED || this == NO_FLOW;
    }
}
