package org.coldpleat.shared.quantity;

/** Checks of arguments: each returns the value or throws with name, limit and unit. */
public final class Require {
    private Require() {}

    /** The value, which must be finite and above 0. */
    public static double positive(String name, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and above 0 " + unit + ", was " + value);
        }
        return value;
    }

    /** The value, which must be finite and at least 0. */
    public static double notNegative(String name, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and at least 0 " + unit + ", was " + value);
        }
        return value;
    }

    /** The value, which must lie within the limits, both included. */
    public static double within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    name + " must lie within " + low + " to " + high + " " + unit + ", was " + value);
        }
        return value;
    }

    /** The value, which must be finite and above a limit. */
    public static double above(String name, double value, double limit, String unit) {
        if (!(value > limit) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be finite and above " + limit + " " + unit + ", was " + value);
        }
        return value;
    }

    /** The value, which must be finite and at least a limit. */
    public static double atLeast(String name, double value, double limit, String unit) {
        if (!(value >= limit) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be finite and at least " + limit + " " + unit + ", was " + value);
        }
        return value;
    }

    /** The number of entries of a list or array, which must be as expected. */
    public static int entries(String name, int count, int expected) {
        if (count != expected) {
            throw new IllegalArgumentException(name + " must have " + expected + " entries, had " + count);
        }
        return count;
    }
}
