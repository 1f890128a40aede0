package org.coldpleat.model.oil;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Writes values in the units the trade uses, for the placeholders of notices. */
final class TradeText {
    private static final MathContext THREE_DIGITS = new MathContext(3);

    private TradeText() {}

    static String celsius(double temperature) {
        double celsius = Math.rint((temperature - 273.15) * 10) / 10;
        String pattern = celsius == Math.rint(celsius) ? "%.0f °C" : "%.1f °C";
        return String.format(Locale.ROOT, pattern, celsius + 0.0);
    }

    static String kinematic(double viscosity) {
        return digits(viscosity * 1e6) + " mm²/s";
    }

    static String dynamic(double viscosity) {
        return digits(viscosity * 1e3) + " mPa s";
    }

    static String density(double density) {
        return String.format(Locale.ROOT, "%.0f kg/m³", density);
    }

    static String digits(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(THREE_DIGITS).toPlainString()
                : "" + value;
    }

    static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    /** Viscosity of an anchor in the unit of its method. */
    static String viscosity(Anchor anchor) {
        return anchor.method() == Anchor.Method.KINEMATIC ? kinematic(anchor.viscosity()) : dynamic(anchor.viscosity());
    }
}
