package org.coldpleat.model.pleat;

/** What a reader of a pack result should know about it. */
public enum PackFlag {
    /** No gaps could be derived, the pack counts as medium alone. */
    CHANNELS_UNKNOWN,
    /** The pleats fill the pitch over part of the depth: more medium than room. */
    CROWDED,
    /** Legs touch somewhere; oil gets there only inside the sheets. */
    LEGS_TOUCH,
    /** The embossing keeps a channel open that would close without it. */
    GAP_FLOOR_HOLDS,
    /** The smallest mean gap is so narrow that slip and flow along the sheet decide, which are poorly known. */
    NARROW_GAP
}
