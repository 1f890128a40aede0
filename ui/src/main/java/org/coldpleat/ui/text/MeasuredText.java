package org.coldpleat.ui.text;

import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;

/** An input as the reader knows it: the words of the case where there are any, else value and spread with unit. */
final class MeasuredText {
    private MeasuredText() {}

    static String of(Measured measured, UnitSystem units) {
        String value = measured.written().isEmpty() ? QuantityFormat.format(measured, units) : measured.written();
        String provenance = "(" + Texts.get("provenance." + measured.provenance()) + ")";
        return value.endsWith(provenance) ? value : value + " " + provenance;
    }
}
