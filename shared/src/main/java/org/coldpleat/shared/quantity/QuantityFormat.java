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
    private static final double THIN = 1e-4;

    /** Sizes below which the smaller unit reads better: volume [m3], flow [m3/s], time that is given in minutes, hours [s]. */
    private static final double CUP = 1e-4;

    private static final double TRICKLE = 1e-8;
    private static final double MINUTES = 180;
    private static final double HOURS = 10800;

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
        Unit unit = unit(kind, si, system);
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
        Unit unit = unit(kind, si, system);
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
        Unit unit = unit(kind, high, system);
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

    /** The unit in which a value of a kind is printed. */
    public static Unit unit(Kind kind, double si, UnitSystem system) {
        if (system == UnitSystem.SI) {
            return Units.of(kind).get(0);
        }
        boolean us = system == UnitSystem.US;
        String symbol = switch (kind) {
            case LENGTH -> us ? "in" : isSmall(si, THIN) ? "um" : "mm";
            case AREA -> us ? "in2" : "cm2";
            case VOLUME -> us ? "qt" : isSmall(si, CUP) ? "mL" : "L";
            case MASS -> us ? "oz" : "g";
            case MASS_RATE -> "mg/h";
            case DURATION -> si == 0 || isSmall(si, MINUTES) ? "s" : isSmall(si, HOURS) ? "min" : "h";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> us ? "°F" : kind == Kind.TEMPERATURE ? "°C" : "K";
            case PRESSURE_DIFFERENCE, GAUGE_PRESSURE -> us ? "psi" : "kPa";
            case FLOW_RATE -> isSmall(si, TRICKLE) ? "mL/h" : us ? "gpm" : "L/min";
            case DISPLACEMENT -> us ? "in3/rev" : "cm3/rev";
            case ROTATION -> "rpm";
            case KINEMATIC_VISCOSITY -> us ? "cSt" : "mm2/s";
            case DYNAMIC_VISCOSITY -> us ? "cP" : "mPa·s";
            case DENSITY -> us ? "lb/ft3" : "kg/m3";
            case BASIS_WEIGHT -> us ? "lb/3000ft2" : "g/m2";
            case MEDIUM_RESISTANCE -> "1/m";
            case PERMEABILITY -> us ? "darcy" : "um2";
            case FACE_VELOCITY -> us ? "ft/min" : "mm/s";
            case LAMINAR_RESISTANCE -> "1/m3";
            case SPRING_RATE -> us ? "lbf/in" : "N/mm";
            case SURFACE_TENSION -> "mN/m";
            case FORCE -> us ? "lbf" : "N";
            case STRESS -> us ? "psi" : "MPa";
            case OVERRIDE -> us ? "psi/gpm" : "kPa/(L/min)";
            case SLIP -> "mm3";
            case HEAT_CONDUCTANCE -> "W/K";
            case POWER -> us ? "hp" : "kW";
            case HEAT_CAPACITY -> "kJ/K";
            case ANGLE -> "deg";
            case FRACTION -> "%";
            case COUNT, RATIO -> "1";
        };
        return Units.require(kind, symbol);
    }

    private static boolean isSmall(double si, double limit) {
        return si != 0 && Math.abs(si) < limit;
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
    private static BigDecimal significant(BigDecimal number, int digits) {
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
        return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
    }

    private static void requireFinite(double value, Kind kind) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a " + kind + " to print must be finite, was " + value);
        }
    }
}
