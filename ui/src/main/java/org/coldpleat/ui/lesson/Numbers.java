package org.coldpleat.ui.lesson;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

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

    /** The same number in a sentence. */
    static Shown ratio(double value) {
        return Shown.word(plain(value));
    }

    /** A number that is whole. */
    static Shown count(double value) {
        return Shown.count(Math.round(value));
    }

    static Shown temperature(double kelvin) {
        return Amount.temperature(kelvin);
    }

    static Shown pressure(double pascal) {
        return new Amount(Look.SHARP_PRESSURE, pascal);
    }

    static Shown flow(double cubicMetersPerSecond) {
        return new Amount(Look.FLOW, cubicMetersPerSecond);
    }
}
