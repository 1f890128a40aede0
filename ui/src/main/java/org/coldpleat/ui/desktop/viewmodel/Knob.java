package org.coldpleat.ui.desktop.viewmodel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;

/**
 * A value of a case that can be tried out by a slider. SI throughout.
 *
 * @param key by which its words are found
 * @param kind of the value
 * @param base value of the case
 * @param low where the slider begins
 * @param high where it ends
 * @param fields fields of the case that carry the value, or go with it
 * @param voided parts of the case that tell of the filter as it was, and not of one with another value
 * @param kept true if a candidate that is kept takes the value along
 */
public record Knob(
        String key,
        Kind kind,
        double base,
        double low,
        double high,
        List<Field> fields,
        List<String> voided,
        boolean kept) {
    public Knob {
        fields = List.copyOf(fields);
        voided = List.copyOf(voided);
        if (!(low <= base && base <= high && low < high)) {
            throw new IllegalArgumentException(
                    "base of " + key + " must lie between low and high, were " + base + ", " + low + ", " + high);
        }
    }

    /** More digits than anyone sets on a slider. */
    private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);

    /**
     * A field that goes with a knob: {@code fixed + growing * factor}.
     *
     * @param path full path of the field
     * @param kind of the field
     * @param growing part of its value that goes in proportion to the knob [SI]
     * @param fixed part of it that stays [SI]
     */
    public record Field(String path, Kind kind, double growing, double fixed) {
        /** What is written there if the knob is turned to so many times its base. */
        String typed(double factor) {
            double value = fixed + growing * factor;
            Unit unit = QuantityFormat.unit(kind, value, UnitSystem.METRIC);
            BigDecimal number = new BigDecimal(unit.fromSi(value)).round(DIGITS).stripTrailingZeros();
            return number.toPlainString() + " " + unit.symbol();
        }
    }
}
