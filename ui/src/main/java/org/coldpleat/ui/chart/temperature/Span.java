package org.coldpleat.ui.chart.temperature;

/**
 * A value with its band [SI].
 *
 * @param value best estimate
 * @param low lower end of the band, not above the value
 * @param high upper end of the band, not below the value
 */
public record Span(double value, double low, double high) {
    public Span {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    "a span needs low <= value <= high, was " + low + ", " + value + ", " + high);
        }
    }

    /** A value without band. */
    public static Span exact(double value) {
        return new Span(value, value, value);
    }
}
