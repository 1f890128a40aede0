package org.coldpleat.ui.lesson;

/**
 * What can be turned in a step once it is answered.
 *
 * @param measure in which its value is told
 * @param low lowest value
 * @param base value that the question names
 * @param high highest value
 */
public record Turned(Measure measure, double low, double base, double high) {
    /** How a value is told. */
    public enum Measure {
        /** Times what the case has [1]. */
        TIMES,
        /** An oil temperature [K]. */
        TEMPERATURE,
        /** A difference of temperatures [K]. */
        KELVIN
    }

    public Turned {
        if (!(low <= base && base <= high && low < high)) {
            throw new IllegalArgumentException(
                    "values must rise from low to high, were " + low + ", " + base + ", " + high);
        }
    }

    static Turned times(double low, double base, double high) {
        return new Turned(Measure.TIMES, low, base, high);
    }

    /** True if a value lies within the ends. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
