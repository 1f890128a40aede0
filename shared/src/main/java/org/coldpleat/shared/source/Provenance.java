package org.coldpleat.shared.source;

/** Where a value comes from, strongest first. Shown beside every input and carried to every verdict. */
public enum Provenance {
    /** Read off the bench by the user. */
    MEASURED,
    /** Printed on the box or the can. */
    PRINTED,
    /** From a maker's data sheet or workshop manual. */
    MAKER,
    /** From a publication. */
    PUBLISHED,
    /** A typical range of the trade that the user asked for by name. */
    TYPICAL,
    /** A guess by the user, or a stated default of the model. */
    GUESSED;

    /** True for values that must be listed among the assumptions of a verdict. */
    public boolean isAssumption() {
        return this == TYPICAL || this == GUESSED;
    }
}
