package org.coldpleat.ui.commandline;

import org.coldpleat.shared.quantity.Measured;

/** An input as the reader knows it: the words of the case where there are any, else value, spread and SI unit. */
final class MeasuredText {
    private MeasuredText() {}

    static String of(Measured measured) {
        String provenance = Texts.get("provenance." + measured.provenance());
        if (!measured.written().isEmpty()) {
            return measured.written() + " (" + provenance + ")";
        }
        String unit = measured.kind().siUnit().equals("1") ? "" : " " + measured.kind().siUnit();
        String range = measured.low() < measured.high()
                ? Texts.get("measured.range", Figures.plain(measured.low()), Figures.plain(measured.high()))
                : "";
        return Figures.plain(measured.value()) + range + unit + " (" + provenance + ")";
    }
}
