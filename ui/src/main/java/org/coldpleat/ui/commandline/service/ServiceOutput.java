package org.coldpleat.ui.commandline.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceResult.Event;
import org.coldpleat.model.verdict.service.ServiceResult.Moment;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.commandline.output.NoticeJson;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Texts;

/** A service life for a spreadsheet, and as JSON described by {@code service-v1.schema.json}. */
public final class ServiceOutput {
    private static final double HOUR = 3600;

    private ServiceOutput() {}

    public static String csv(ServiceResult result, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        CsvWriter csv = new CsvWriter();
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.hours"))
                .text(Texts.get("csv.ratio"))
                .text(Texts.get("csv.ratioLow"))
                .text(Texts.get("csv.ratioHigh"))
                .text(Texts.get("csv.packResistance"))
                .text(Texts.get("csv.warmDrop", units.pressure().symbol()))
                .text(Texts.get("csv.warmDropLow", units.pressure().symbol()))
                .text(Texts.get("csv.warmDropHigh", units.pressure().symbol()))
                .text(Texts.get("csv.hotShare"))
                .text(Texts.get("csv.openingTemperature", units.temperature().symbol()))
                .text(Texts.get("csv.openingLow", units.temperature().symbol()))
                .text(Texts.get("csv.openingHigh", units.temperature().symbol()))
                .text(Texts.get("csv.retained"))
                .text(Texts.get("csv.oilDirt"))
                .text(Texts.get("csv.dirtSpread"))
                .text(Texts.get("csv.code"))
                .text(Texts.get("csv.unfiltered"))
                .text(Texts.get("csv.unfilteredLow"))
                .text(Texts.get("csv.unfilteredHigh"))
                .text(Texts.get("csv.winterUnfiltered", units.volume().symbol()))
                .endRow();
        for (ServiceResult.Candidate one : result.candidates()) {
            for (Moment moment : one.moments()) {
                csv.text(one.name())
                        .number(moment.time() / HOUR)
                        .number(moment.resistanceRatio())
                        .number(moment.ratioLow())
                        .number(moment.ratioHigh())
                        .number(moment.packResistance())
                        .number(units.pressure().of(moment.pressureDrop()))
                        .number(units.pressure().of(moment.dropLow()))
                        .number(units.pressure().of(moment.dropHigh()))
                        .number(moment.bypassShare())
                        .number(units.temperature().of(moment.openingTemperature()))
                        .number(units.temperature().of(moment.openingLow()))
                        .number(units.temperature().of(moment.openingHigh()))
                        .number(1e3 * moment.retained())
                        .number(1e3 * moment.concentration())
                        .number(moment.dirtSpread())
                        .text(moment.cleanliness())
                        .number(moment.unfilteredShare())
                        .number(moment.unfilteredLow())
                        .number(moment.unfilteredHigh())
                        .number(units.volume().of(moment.winterUnfiltered()))
                        .endRow();
            }
        }
        return csv.finished();
    }

    static String json(ServiceResult result) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "service-v1")
                .text("programVersion", ProgramVersion.text())
                .text("title", result.title())
                .flag("invented", result.invented())
                .text("digest", result.digest())
                .number("horizon_s", result.horizon())
                .number("winterStart_K", result.winterStart())
                .array("candidates");
        result.candidates().forEach(one -> candidate(json, one));
        json.endArray().array("verdicts");
        result.verdicts()
                .forEach(verdict -> json.element()
                        .text("code", verdict.code())
                        .text("text", Sentences.of(verdict, UnitSystem.METRIC).strip())
                        .endObject());
        json.endArray().array("notices");
        result.notices().forEach(notice -> NoticeJson.write(json, notice));
        return json.endArray().endObject().finished();
    }

    private static void candidate(JsonText json, ServiceResult.Candidate one) {
        json.element().text("name", one.name()).text("status", one.status().name());
        event(json, "hotBypass", one.hotBypass());
        event(json, "winterBypass", one.winterBypass());
        json.number("hotFactor", number(one.hotFactor().simulated()))
                .number("hotFactorClosedForm", number(one.hotFactor().closedForm()))
                .number("winterFactor", number(one.coldFactor().simulated()))
                .number("winterFactorClosedForm", number(one.coldFactor().closedForm()))
                .number("massClosure", one.massClosure())
                .number("startError", one.startError())
                .array("moments");
        for (Moment moment : one.moments()) {
            json.element()
                    .number("time_s", moment.time())
                    .number("resistanceRatio", moment.resistanceRatio())
                    .number("resistanceRatioLow", moment.ratioLow())
                    .number("resistanceRatioHigh", moment.ratioHigh())
                    .number("packResistance_1_m3", moment.packResistance())
                    .number("pressureDrop_Pa", moment.pressureDrop())
                    .number("pressureDropLow_Pa", moment.dropLow())
                    .number("pressureDropHigh_Pa", moment.dropHigh())
                    .number("bypassShare", moment.bypassShare())
                    .number("openingTemperature_K", moment.openingTemperature())
                    .number("openingTemperatureLow_K", moment.openingLow())
                    .number("openingTemperatureHigh_K", moment.openingHigh())
                    .number("retained_kg", moment.retained())
                    .number("concentration_kg_m3", moment.concentration())
                    .number("dirtSpread", moment.dirtSpread())
                    .text("cleanliness", moment.cleanliness())
                    .number("unfilteredShare", moment.unfilteredShare())
                    .number("unfilteredShareLow", moment.unfilteredLow())
                    .number("unfilteredShareHigh", moment.unfilteredHigh())
                    .number("winterUnfiltered_m3", moment.winterUnfiltered())
                    .endObject();
        }
        json.endArray().endObject();
    }

    private static void event(JsonText json, String name, Optional<Event> event) {
        if (event.isEmpty()) {
            json.nothing(name);
            return;
        }
        json.object(name)
                .flag("happens", event.get().happens())
                .number("time_s", event.get().time())
                .number("low_s", event.get().low())
                .number("high_s", event.get().high())
                .endObject();
    }

    private static double number(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }
}
