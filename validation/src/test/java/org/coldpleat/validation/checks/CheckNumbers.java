package org.coldpleat.validation.checks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as the page prints them: few digits, so that rounding on another machine does not show. */
final class CheckNumbers {
    /** Below this part of the expected value a tolerance asks for arithmetic only, and deviations are rounding. */
    static final double ROUNDING = 1e-6;

    /** Deviations below this part of the tolerance are printed as none. */
    static final double NONE = 1e-3;

    private CheckNumbers() {}

    /** A value that was printed somewhere: up to six digits, no trailing zeros. */
    static String given(double value) {
        return digits(value, 6);
    }

    /** A computed value: four digits. */
    static String computed(double value) {
        return digits(value, 4);
    }

    static String digits(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_UP))
                .stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= -4 && exponent < 7) {
            return rounded.toPlainString();
        }
        return new BigDecimal(rounded.unscaledValue(), rounded.precision() - 1).toPlainString() + "e" + exponent;
    }

    static String percent(double ratio, int digits) {
        return digits(100 * ratio, digits) + " %";
    }

    static String withUnit(String number, String unit) {
        return unit.isEmpty() || unit.equals("1") ? number : number + " " + unit;
    }
}
