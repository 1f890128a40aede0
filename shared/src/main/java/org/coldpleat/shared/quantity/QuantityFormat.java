package org.coldpleat.shared.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Prints quantities with as many digits as their uncertainty allows: two significant digits of the uncertainty and the
 * value to the same place; four significant digits where no uncertainty is stated. Decimal point and plain minus sign,
 * whatever the locale.
 */
public final class QuantityFormat {
    private static final int DIGITS = 4;
    private static final int SPREAD_DIGITS = 2;
    /** Digits that survive a unit conversion in double arithmetic; rounding starts from these. */
    private static final MathContext SOUND_DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    private static final double LARGE = 1e6;
    private static final double SMALL = 1e-3;

    private QuantityFormat() {}

    /**
     * Prints a value with its spread: {@code 36.80 ± 0.20 mm}. The number behind ± is half the interval, or half the 95
     * % band; a value known within a factor is printed as its 95 % band.
     */
    public static String format(Measured measured, UnitSystem system) {
        if (measured.spread() == Spread.LOG_NORMAL) {
            return band(measured, system);
        }
        return format(measured.value(), measured.high() - measured.value(), measured.kind(), system);
    }

    /** Prints the interval or 95 % band of a value: {@code 12.0 to 15.0 psi}. */
    public static String band(Measured measured, UnitSystem system) {
        return band(measured.low(), measured.high(), measured.kind(), system);
    }

    /** Prints an SI value without stated uncertainty to four significant digits. */
    public static String format(double si, Kind kind, UnitSystem system) {
        requireFinite(si, kind);
        Unit unit = system.unit(kind, si);
        BigDecimal number = number(unit.fromSi(si), 0);
        if (kind == Kind.COUNT && si == Math.rint(si)) {
            return number.toBigInteger().toString();
        }
        return join(text(number), unit);
    }

    /** Prints an SI value with the half-width of its interval or band [SI]. */
    public static String format(double si, double halfWidth, Kind kind, UnitSystem system) {
        requireFinite(si, kind);
        requireFinite(halfWidth, kind);
        Unit unit = system.unit(kind, si);
        double spread = unit.differenceFromSi(halfWidth);
        double value = unit.fromSi(si);
        if (!(spread > 0) || spread < Math.abs(value) * 1e-12) {
            return format(si, kind, system);
        }
        int exponent = exponent(Math.max(Math.abs(value), spread));
        BigDecimal half = significant(number(spread, exponent), SPREAD_DIGITS);
        BigDecimal number = number(value, exponent).setScale(half.scale(), RoundingMode.HALF_UP);
        String numbers = number.toPlainString() + " ± " + half.toPlainString();
        if (exponent != 0) {
            return join("(" + numbers + ")e" + exponent, unit);
        }
        return join(unit.symbol().equals("%") ? "(" + numbers + ")" : numbers, unit);
    }

    /** Prints an interval of SI values: {@code 12.0 to 15.0 psi}. */
    public static String band(double low, double high, Kind kind, UnitSystem system) {
        requireFinite(low, kind);
        requireFinite(high, kind);
        if (low > high) {
            throw new IllegalArgumentException("low " + low + " must not exceed high " + high + " " + kind.siUnit());
        }
        Unit unit = system.unit(kind, high);
        double half = unit.differenceFromSi(high - low) / 2;
        if (!(half > 0)) {
            return format(high, kind, system);
        }
        double largest = Math.max(Math.abs(unit.fromSi(low)), Math.abs(unit.fromSi(high)));
        int exponent = exponent(largest);
        int scale = significant(number(half, exponent), SPREAD_DIGITS).scale();
        String ends = end(unit.fromSi(low), exponent, scale) + " to " + end(unit.fromSi(high), exponent, scale);
        return join(ends, unit);
    }

    private static String end(double number, int exponent, int scale) {
        String digits =
                number(number, exponent).setScale(scale, RoundingMode.HALF_UP).toPlainString();
        return exponent == 0 ? digits : digits + "e" + exponent;
    }

    private static String text(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        int exponent = exponent(Math.abs(number.doubleValue()));
        String digits = significant(number.scaleByPowerOfTen(-exponent), DIGITS).toPlainString();
        return exponent == 0 ? digits : digits + "e" + exponent;
    }

    /** A number with the power of ten taken out. */
    private static BigDecimal number(double value, int exponent) {
        return new BigDecimal(value).round(SOUND_DIGITS).scaleByPowerOfTen(-exponent);
    }

    /** A number to so many significant digits, zeros at the end kept. */
    static BigDecimal significant(BigDecimal number, int digits) {
        BigDecimal rounded = number.round(new MathContext(digits, RoundingMode.HALF_UP));
        return rounded.setScale(digits - rounded.precision() + rounded.scale(), RoundingMode.UNNECESSARY);
    }

    /** Power of ten to take out; 0 for sizes that read well as they are. */
    private static int exponent(double size) {
        if (size == 0 || (size >= SMALL && size < LARGE)) {
            return 0;
        }
        return (int) Math.floor(Math.log10(size));
    }

    private static String join(String number, Unit unit) {
        return unit.printed().isEmpty() ? number : number + " " + unit.printed();
    }

    private static void requireFinite(double value, Kind kind) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a " + kind + " to print must be finite, was " + value);
        }
    }
}
