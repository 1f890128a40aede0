package org.coldpleat.validation.speed;

/**
 * What one operation takes.
 *
 * @param seconds [s]
 * @param bytes allocated [B]; NaN where nobody looked
 */
record Figure(double seconds, double bytes) {
    /** A figure that is no allocation. */
    static Figure ofTime(double seconds) {
        return new Figure(seconds, Double.NaN);
    }
}
