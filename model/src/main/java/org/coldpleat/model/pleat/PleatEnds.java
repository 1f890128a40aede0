package org.coldpleat.model.pleat;

/** What the two ends of a leg look like. */
public enum PleatEnds {
    /** Folds as thick as the medium close the channels; the flow squeezes in and out at mouths of finite width. */
    FOLDED,
    /** Solid plugs of no thickness close the channels and the mouths cost nothing: the textbook limit. */
    PLUGGED
}
