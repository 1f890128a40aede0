package org.coldpleat.shared.quantity;

import java.util.Locale;

/** Numbers with units for the placeholders of messages: metric trade units with the US ones behind. */
public final class Text {
    private static final double PASCALS_PER_PSI = 6894.757293168361;
    private static final double ZERO_CELSIUS = 273.15;

    private Text() {}

    public static String millimeters(double meters) {
        return format("%.2f mm", 1e3 * meters);
    }

    public static String kilopascals(double pascals) {
        return format("%.0f kPa (%.1f psi)", pascals / 1e3, pascals / PASCALS_PER_PSI);
    }

    public static String celsius(double kelvin) {
        double degrees = kelvin - ZERO_CELSIUS;
        return format("%.1f °C (%.0f °F)", degrees, 32 + 1.8 * degrees);
    }

    public static String kelvins(double difference) {
        return format("%.1f K", difference);
    }

    public static String gramsPerArea(double value) {
        return format("%.0f g/m²", 1e3 * value);
    }

    public static String hours(double seconds) {
        return format("%.0f h", seconds / 3600);
    }

    /** Hours of an estimate with a wide band: two digits. */
    public static String roughHours(double seconds) {
        double hours = seconds / 3600;
        if (!Double.isFinite(hours) || hours == 0) {
            return hours(seconds);
        }
        double unit = Math.pow(10, Math.floor(Math.log10(hours)) - 1);
        return hours < 10 ? format("%.1f h", hours) : format("%.0f h", Math.rint(hours / unit) * unit);
    }

    public static String percent(double share) {
        double percent = 100 * share;
        return percent > 0 && percent < 1 ? format("%.2f %%", percent) : format("%.0f %%", percent);
    }

    public static String signedPercent(double share) {
        return Math.abs(share) < 0.005 ? "0 %" : format("%+.0f %%", 100 * share);
    }

    public static String grams(double kilograms) {
        return format("%.3g g", 1e3 * kilograms);
    }

    public static String area(double squareMeters) {
        return format("%.0f cm² (%.0f in²)", 1e4 * squareMeters, squareMeters / (0.0254 * 0.0254));
    }

    public static String resistance(double perMeter) {
        return format("%.3g 1/m", perMeter);
    }

    public static String megapascals(double pascals) {
        return format("%.0f MPa", pascals / 1e6);
    }

    public static String number(double value) {
        return format("%.2g", value);
    }

    static String litersPerMinute(double flow) {
        return format("%.1f L/min", flow * 6e4);
    }

    public static String rpm(double turnsPerSecond) {
        return format("%.0f rpm", 60 * turnsPerSecond);
    }

    public static String liters(double volume) {
        double liters = 1e3 * volume;
        return liters != 0 && Math.abs(liters) < 0.1
                ? format("%.3g mL", 1e3 * liters)
                : format(Math.abs(liters) < 10 ? "%.2f L" : "%.1f L", liters);
    }

    /** A time as people say it: seconds, then minutes and seconds, then hours and minutes. */
    public static String duration(double seconds) {
        if (seconds < 59.5) {
            return seconds < 9.95 ? format("%.1f s", seconds) : format("%.0f s", seconds);
        }
        long whole = Math.round(seconds);
        return whole < 3600
                ? format("%d min %02d s", whole / 60, whole % 60)
                : format("%d h %02d min", whole / 3600, whole % 3600 / 60);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
