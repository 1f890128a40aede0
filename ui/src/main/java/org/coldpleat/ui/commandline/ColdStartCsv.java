package org.coldpleat.ui.commandline;

import org.coldpleat.model.run.ColdStart;
import org.coldpleat.model.run.ColdStartCandidate;
import org.coldpleat.model.run.ColdStartCandidate.Moment;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;

/** A cold start over time for a spreadsheet: one row for each candidate and moment. */
final class ColdStartCsv {
    private ColdStartCsv() {}

    static String of(ColdStart start, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        String degree = units.temperature().symbol();
        String pressure = units.pressure().symbol();
        CsvWriter csv = new CsvWriter();
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.time"))
                .text(Texts.get("csv.temperature", degree))
                .text(Texts.get("csv.metal", degree))
                .text(Texts.get("csv.element", degree))
                .text(Texts.get("csv.pump", pressure))
                .text(Texts.get("csv.gallery", pressure))
                .text(Texts.get("csv.filterDrop", pressure))
                .text(Texts.get("csv.valveDifference", pressure))
                .text(Texts.get("csv.openingPressure", pressure))
                .text(Texts.get("csv.mediumFlow", units.flow().symbol()))
                .text(Texts.get("csv.bypassFlow", units.flow().symbol()))
                .text(Texts.get("csv.mapShare"))
                .endRow();
        for (ColdStartCandidate one : start.candidates()) {
            for (Moment moment : one.moments()) {
                csv.text(one.name())
                        .number(moment.time())
                        .number(units.temperature().of(moment.oilTemperature()))
                        .number(units.temperature().of(moment.metalTemperature()))
                        .number(units.temperature().of(moment.elementTemperature()))
                        .number(units.pressure().of(moment.pumpPressure()))
                        .number(units.pressure().of(moment.galleryPressure()))
                        .number(units.pressure().of(moment.filterDrop()))
                        .number(one.hasValve() ? units.pressure().of(moment.valveDifference()) : Double.NaN)
                        .number(units.pressure().of(moment.openingPressure()))
                        .number(units.flow().of(moment.mediumFlow()))
                        .number(units.flow().of(moment.bypassFlow()))
                        .number(moment.bypassShare())
                        .endRow();
            }
        }
        return csv.finished();
    }
}
