package org.coldpleat.model.certainty;

/**
 * Oil temperature at which a valve starts to open, with its 95 % band. The band need not lie evenly about the value, and
 * an end is infinite where the valve may as well never open, or may be open however warm.
 *
 * @param value best estimate [K]
 * @param low colder end [K], or negative infinity
 * @param high warmer end [K], or positive infinity
 */
public record OpeningBand(double value, double low, double high) {
    /** Half the width of the band, or its one side that ends [K]; 0 if neither does. */
    public double halfWidth() {
        double width = Double.isInfinite(low) ? high - value : Double.isInfinite(high) ? value - low : (high - low) / 2;
        return Double.isFinite(width) ? Math.max(0, width) : 0;
    }
}
