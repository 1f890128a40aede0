package org.coldpleat.model.bench;

import org.coldpleat.shared.source.Source;

/** Weight and head. */
final class Gravity {
    /** Standard acceleration of free fall [m/s2]. */
    @Source("ISO 80000-3:2006, conventional value")
    static final double FREE_FALL = 9.80665;

    private Gravity() {}
}
