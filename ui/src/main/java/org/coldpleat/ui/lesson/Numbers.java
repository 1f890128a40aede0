package org.coldpleat.ui.lesson;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;

/** Numbers in the sentences of the lesson. */
final class Numbers {
    private static final double SMALL = 0.95;
    private static final double ONE_DIGIT = 9.5;

    private Numbers() {}

    /** About two significant digits, whole above ten: no more than an explanation needs. */
    static String plain(double value) {
        double size = Math.abs(value);
        BigDecimal number = new BigDecimal(value);
        return size < SMALL
                ? number.round(new MathContext(2, RoundingMode.HALF_EVEN)).toPlainString()
                : number.setScale(size < ONE_DIGIT ? 1 : 0, RoundingMode.HALF_EVEN)
                        .toPlainString();
    }

    /** Three significant digits at most, for what a hand turns. */
    static String fine(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A number that is whole. */
    static String count(double value) {
        return Long.toString(Math.round(value));
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
