package org.coldpleat.ui.commandline;

import org.coldpleat.model.run.ConfidenceResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;

/** Confidence for a spreadsheet: one row a candidate and state; an end without a number is never or always. */
final class ConfidenceCsv {
    private ConfidenceCsv() {}

    static String of(ConfidenceResult result, UnitSystem system) {
        ShownUnit unit = ShownUnits.of(system).temperature();
        CsvWriter csv = new CsvWriter()
                .text(Texts.get("csv.state"))
                .text(Texts.get("csv.candidate"))
                .text(Texts.get("confidence.median", unit.symbol()))
                .text(Texts.get("csv.openingLow", unit.symbol()))
                .text(Texts.get("csv.openingHigh", unit.symbol()))
                .text(Texts.get("csv.chanceOpen"))
                .endRow();
        for (ConfidenceResult.StateOutcome one : result.outcomes()) {
            csv.text(one.state())
                    .text(one.candidate())
                    .text(end(one.opening().median(), unit))
                    .text(end(one.opening().low(), unit))
                    .text(end(one.opening().high(), unit))
                    .number(one.chanceOpen())
                    .endRow();
        }
        return csv.finished();
    }

    private static String end(double kelvin, ShownUnit unit) {
        if (Double.isInfinite(kelvin)) {
            return Texts.get(kelvin > 0 ? "confidence.always" : "confidence.never");
        }
        return Double.toString(unit.of(kelvin));
    }
}
