package org.coldpleat.model.resolve.engine;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Hot oil pressure that engines show where their manual states only the least that is allowed. At speed the least lies a
 * quarter below the middle of what manuals print as a range. At idle it is a limit of condemnation, which differs between
 * makers far more than readings do: the likely reading is drawn towards the usual one.
 */
@Source("eight manuals that print a range, middle over least 1.08 to 1.91, median 1.33; rule for idle derived here")
@Validity("hot oil of the right grade in a sound engine")
final class StatedMinimum {
    private static final double AT_SPEED = 1.35;
    private static final double AT_SPEED_FACTOR = 1.4;
    private static final double AT_IDLE = 1.15;
    private static final double IDLE_FACTOR = 1.7;

    /** Usual reading and usual least at idle [Pa]. */
    private static final double USUAL_READING = 150e3;

    private static final double USUAL_LEAST = 70e3;
    private static final double DRAWN = 0.4;

    private StatedMinimum() {}

    /** The likely reading, with its band. */
    static Measured likely(Measured least, boolean idle) {
        double value = idle
                ? Math.max(AT_IDLE * least.value(), USUAL_READING * Math.pow(least.value() / USUAL_LEAST, DRAWN))
                : AT_SPEED * least.value();
        return Measured.within(Kind.GAUGE_PRESSURE, value, idle ? IDLE_FACTOR : AT_SPEED_FACTOR, Provenance.TYPICAL);
    }
}
