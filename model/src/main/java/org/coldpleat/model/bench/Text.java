package org.coldpleat.model.bench;

import java.util.Locale;

/** Numbers with units for the values of notices. */
final class Text {
    private Text() {}

    public static String percent(double share) {
        return String.format(Locale.ROOT, Math.abs(share) < 0.1 ? "%.1f %%" : "%.0f %%", 100 * share);
    }

    static String pressure(double pascal) {
        return Math.abs(pascal) >= 1000
                ? String.format(Locale.ROOT, "%.2f kPa", pascal / 1000)
                : String.format(Locale.ROOT, "%.0f Pa", pascal);
    }

    static String micrometers(double meters) {
        return String.format(Locale.ROOT, "%.3g µm", meters * 1e6);
    }

    public static String millimeters(double meters) {
        return String.format(Locale.ROOT, "%.3g mm", meters * 1e3);
    }

    public static String number(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }

    static String count(long value) {
        return Long.toString(value);
    }

    /** Row numbers as a person counts them, from 1. */
    static String rows(Iterable<Integer> rows) {
        StringBuilder text = new StringBuilder();
        for (int row : rows) {
            text.append(text.length() == 0 ? "" : ", ").append(row + 1);
        }
        return text.toString();
    }
}
