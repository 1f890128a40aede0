package org.coldpleat.model.loading;

/** Argument checks of this package; each failure names the value, the limit and the unit. */
final class Limits {
    private Limits() {}

    static double above(double value, double limit, String name, String unit) {
        if (!(value > limit) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be finite and above " + limit + " " + unit + ", was " + value);
        }
        return value;
    }

    static double atLeast(double value, double limit, String name, String unit) {
        if (!(value >= limit) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be finite and at least " + limit + " " + unit + ", was " + value);
        }
        return value;
    }

    static double share(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must lie in 0..1 [1], was " + value);
        }
        return value;
    }

    static void sameLength(int expected, int actual, String name) {
        if (expected != actual) {
            throw new IllegalArgumentException(
                    name + " must have " + expected + " entries, one a class or cell, had " + actual);
        }
    }
}
