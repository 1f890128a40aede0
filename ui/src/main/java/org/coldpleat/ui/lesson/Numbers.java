package org.coldpleat.ui.lesson;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;

/** Numbers in the sentences of the lesson. */
final class Numbers {
    private static final int DIGITS = 2;

    private Numbers() {}

    /** Two significant digits, whole above a hundred: no more than an explanation needs. */
    static String plain(double value) {
        BigDecimal number = new BigDecimal(value);
        BigDecimal rounded = Math.abs(value) >= 100
                ? number.setScale(0, RoundingMode.HALF_EVEN)
                : number.round(new MathContext(DIGITS, RoundingMode.HALF_EVEN));
        return rounded.stripTrailingZeros().toPlainString();
    }

    static String temperature(double kelvin) {
        return both(kelvin, Kind.TEMPERATURE);
    }

    static String pressure(double pascal) {
        return both(pascal, Kind.PRESSURE_DIFFERENCE);
    }

    static String flow(double cubicMetersPerSecond) {
        return both(cubicMetersPerSecond, Kind.FLOW_RATE);
    }

    private static String both(double si, Kind kind) {
        return QuantityFormat.format(si, kind, UnitSystem.METRIC) + " ("
                + QuantityFormat.format(si, kind, UnitSystem.US) + ")";
    }
}
