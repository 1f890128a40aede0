package org.coldpleat.model.resolve.candidate;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the nominal diameter of a thread as it is written on sheets: {@code M20 x 1.5} or {@code 3/4-16}. */
final class ThreadText {
    private static final Pattern METRIC = Pattern.compile("M\\s*(\\d+(?:\\.\\d+)?)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern INCH = Pattern.compile("(?:(\\d+)[ -])?(\\d+)/(\\d+)\\b.*");
    private static final double INCH_LENGTH = 0.0254;

    private ThreadText() {}

    /** Nominal diameter [m]; empty if the text names none. */
    static Optional<Double> nominal(String text) {
        Matcher metric = METRIC.matcher(text.strip());
        if (metric.matches()) {
            return Optional.of(1e-3 * Double.parseDouble(metric.group(1)));
        }
        Matcher inch = INCH.matcher(text.strip());
        if (!inch.matches() || Integer.parseInt(inch.group(3)) == 0) {
            return Optional.empty();
        }
        double whole = inch.group(1) == null ? 0 : Double.parseDouble(inch.group(1));
        return Optional.of(
                INCH_LENGTH * (whole + Double.parseDouble(inch.group(2)) / Double.parseDouble(inch.group(3))));
    }
}
