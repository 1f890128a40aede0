package org.coldpleat.model.change;

/** How a filter comes to more or less area. */
public enum AreaBy {
    /** Taller pleats: count, depth and channels stay, and so does what caps and glue beads hide. */
    TALLER_PLEATS,
    /** A longer strip in as many pleats of the same height: deeper pleats on the same core, the folds stay. */
    DEEPER_PLEATS,
    /** More pleats of the same depth and height on the same core, in whole pleats; the channels narrow. */
    MORE_PLEATS
}
