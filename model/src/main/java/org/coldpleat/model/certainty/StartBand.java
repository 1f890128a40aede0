package org.coldpleat.model.certainty;

/**
 * A result of a start with its band. The band leans to either side by how far the unknowns move the result that way; a
 * time or volume ends at 0.
 *
 * @param value best estimate [SI]
 * @param low low end of the 95 % band [SI]
 * @param high high end [SI]
 */
public record StartBand(double value, double low, double high) {
    /** Half the width of the band, or its lower side where it has no upper end [SI]; 0 if it has no number. */
    public double halfWidth() {
        double width = Double.isInfinite(high) ? value - low : (high - low) / 2;
        return Double.isFinite(width) ? Math.max(0, width) : 0;
    }
}
