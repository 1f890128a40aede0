package org.coldpleat.validation.speed;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures as the page shows them: a number to a few digits and its unit. */
final class FigureText {
    private static final MathContext DIGITS = new MathContext(3);
    private static final String[] TIMES = {"ns", "µs", "ms", "s"};
    private static final String[] SIZES = {"B", "kB", "MB", "GB"};

    /** Of less than so many bytes an operation, the profiler cannot tell whether the operation made them [B]. */
    private static final double LEAST_BYTES = 1;

    private FigureText() {}

    /** A time [s]. */
    static String time(double seconds) {
        return scaled(seconds / 1e-9, TIMES);
    }

    /** A time as {@link #time} writes it, in s. */
    static double seconds(String text) {
        String[] words = text.strip().split(" ", -1);
        for (int i = 0; i < TIMES.length; i++) {
            if (words.length == 2 && words[1].equals(TIMES[i])) {
                return Double.parseDouble(words[0]) * Math.pow(1000, i) * 1e-9;
            }
        }
        throw new IllegalArgumentException("no time with its unit: " + text);
    }

    /** An amount of memory [B]. */
    static String bytes(double bytes) {
        return bytes < LEAST_BYTES ? "none" : scaled(bytes, SIZES);
    }

    /** A pure number. */
    static String ratio(double ratio) {
        return plain(ratio);
    }

    private static String scaled(double value, String[] units) {
        double left = value;
        int unit = 0;
        while (left >= 999.5 && unit + 1 < units.length) {
            left /= 1000;
            unit++;
        }
        return plain(left) + " " + units[unit];
    }

    private static String plain(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no number: " + value);
        }
        return BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
