package org.coldpleat.model.coldstart;

/** How the computation of a start ended. */
public enum StartStatus {
    /** Reached the end of the computed time. */
    COMPLETED,
    /** The circuit gave no operating point at some moment; the numbers must not be used. */
    CIRCUIT_NOT_SOLVED,
    /** The step of the integration shrank to nothing; the numbers must not be used. */
    STEP_TOO_SMALL,
    /** More events than any sound start has; the numbers must not be used. */
    TOO_MANY_EVENTS;

    /** Whether the numbers may be used. */
    public boolean isAnswer() {
        return this == COMPLETED;
    }
}
