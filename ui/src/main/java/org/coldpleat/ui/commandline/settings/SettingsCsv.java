package org.coldpleat.ui.commandline.settings;

import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsResult.AfterStart;
import org.coldpleat.model.sizing.SettingsResult.Candidate;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Texts;

/** Settings for a spreadsheet: one row for a candidate, a setting and a state. */
public final class SettingsCsv {
    private SettingsCsv() {}

    public static String of(SettingsResult result, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        String pressure = units.pressure().symbol();
        CsvWriter csv = new CsvWriter();
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.settingPressure", pressure))
                .text(Texts.get("csv.asMeasured"))
                .text(Texts.get("csv.state"))
                .text(Texts.get("csv.openingTemperature", units.temperature().symbol()))
                .text(Texts.get("csv.openingLow", units.temperature().symbol()))
                .text(Texts.get("csv.openingHigh", units.temperature().symbol()))
                .text(Texts.get("csv.startShare"))
                .text(Texts.get("csv.startOpen"))
                .text(Texts.get("csv.startUnfiltered", units.volume().symbol()))
                .text(Texts.get("csv.startPeak", pressure))
                .text(Texts.get("csv.rangePeak", pressure))
                .endRow();
        for (Candidate one : result.candidates()) {
            for (Row row : one.rows()) {
                AfterStart start = row.afterStart()
                        .filter(AfterStart::completed)
                        .orElse(new AfterStart(false, Double.NaN, Double.NaN, Double.NaN, Double.NaN));
                for (int s = 0; s < result.states().size(); s++) {
                    OpeningBand opening = row.openings().get(s);
                    csv.text(one.name())
                            .number(units.pressure().of(row.setting()))
                            .text(Texts.get(row.measured() ? "csv.yes" : "csv.no"))
                            .text(result.states().get(s))
                            .number(units.temperature().of(opening.value()))
                            .number(units.temperature().of(opening.low()))
                            .number(units.temperature().of(opening.high()))
                            .number(start.bypassShare())
                            .number(start.openSeconds())
                            .number(units.volume().of(start.unfilteredVolume()))
                            .number(units.pressure().of(start.elementPeak()))
                            .number(units.pressure().of(row.overRange().pressure()))
                            .endRow();
                }
            }
        }
        return csv.finished();
    }
}
