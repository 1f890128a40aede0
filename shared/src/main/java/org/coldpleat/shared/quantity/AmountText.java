package org.coldpleat.shared.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes one number in a unit, with the digits of its look or with fewer where its band does not allow those. */
final class AmountText {
    /** Times from here on are told in minutes, and those from {@link #HOURS} in hours [s]. */
    static final double MINUTES = 59.5;

    private static final double HOURS = 3599.5;
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final Pattern POWER = Pattern.compile("e\\+?(-?)0?(?=\\d)");
    private static final Pattern MINUS_ZERO = Pattern.compile("-0(\\.0+)?( .*)?");

    private AmountText() {}

    /**
     * A number in the unit of a pattern.
     *
     * @param value [SI]
     * @param band half-width [SI]; 0 if none is stated
     * @param pattern digits and unit, such as {@code %.1f kPa}; {@code %s} for up to three digits without powers of ten
     */
    static String of(Kind kind, double value, double band, String pattern) {
        int space = pattern.indexOf(' ');
        Unit unit = Units.require(
                kind, space < 0 ? "1" : pattern.substring(space + 1).replace("%%", "%"));
        double number = unit.fromSi(value);
        String text = plain(number, pattern);
        String digits = text.split(" ", 2)[0];
        if (!(band > 0) || !Double.isFinite(number) || digits.contains("e")) {
            return text;
        }
        int decimals = decimals(number, unit.differenceFromSi(band), kind != Kind.TEMPERATURE);
        int point = digits.indexOf('.');
        if (decimals >= (point < 0 ? 0 : digits.length() - point - 1)) {
            return text;
        }
        BigDecimal rounded = new BigDecimal(pattern.startsWith("%s") ? digits : Double.toString(number))
                .setScale(decimals, RoundingMode.HALF_UP);
        return plain(
                rounded.doubleValue(),
                pattern.replaceFirst("%(\\+?)(?:s|\\.\\d[fg])", "%$1." + Math.max(0, decimals) + "f"));
    }

    private static String plain(double number, String pattern) {
        if (pattern.startsWith("%s")) {
            String digits = Double.isFinite(number)
                    ? new BigDecimal(number)
                            .round(THREE_DIGITS)
                            .stripTrailingZeros()
                            .toPlainString()
                    : Double.toString(number);
            return digits + pattern.substring(2);
        }
        String text = POWER.matcher(String.format(Locale.ROOT, pattern, number)).replaceFirst("e$1");
        return MINUS_ZERO.matcher(text).matches() ? text.substring(1) : text;
    }

    /**
     * Decimals that leave two digits of a half-width; negative left of the point. The first digit of a size stays, that of a
     * reading with a zero of its own need not.
     */
    private static int decimals(double number, double half, boolean isSize) {
        int allowed = QuantityFormat.significant(new BigDecimal(half), 2).scale();
        return isSize && number != 0 ? Math.max(allowed, -(int) Math.floor(Math.log10(Math.abs(number)))) : allowed;
    }

    /** A time of a minute or more [s], to whole seconds, tens of them, minutes, tens of them, or hours. */
    static String duration(double seconds, double band) {
        if (!Double.isFinite(seconds)) {
            return of(Kind.DURATION, seconds, 0, "%.0f s");
        }
        int place = band > 0 ? -decimals(seconds, band, true) : 0;
        long finest = seconds < HOURS ? 1 : 60;
        long step = Math.max(finest, place < 1 ? 1 : place == 1 ? 10 : place == 2 ? 60 : place == 3 ? 600 : 3600);
        long whole = Math.round(seconds / step) * step;
        if (whole < 3600) {
            return step < 60
                    ? String.format(Locale.ROOT, "%d min %02d s", whole / 60, whole % 60)
                    : String.format(Locale.ROOT, "%d min", whole / 60);
        }
        return step < 3600
                ? String.format(Locale.ROOT, "%d h %02d min", whole / 3600, whole % 3600 / 60)
                : String.format(Locale.ROOT, "%d h", whole / 3600);
    }
}
