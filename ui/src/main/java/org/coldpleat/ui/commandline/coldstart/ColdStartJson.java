package org.coldpleat.ui.commandline.coldstart;

import java.util.List;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.ColdStartCandidate.Event;
import org.coldpleat.model.certainty.ColdStartCandidate.Moment;
import org.coldpleat.model.certainty.ColdStartCandidate.PartPeak;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.ui.commandline.output.FindingsJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.ProgramVersion;

/** A cold start as JSON, described by {@code coldstart-v1.schema.json}. */
final class ColdStartJson {
    private final JsonText json = new JsonText();

    private ColdStartJson() {}

    /** The start; {@code names} are those of all candidates of the case. */
    static String of(ColdStart start, List<String> names) {
        ColdStartJson writer = new ColdStartJson();
        writer.write(start, names);
        return writer.json.finished();
    }

    private void write(ColdStart start, List<String> names) {
        json.element()
                .text("schemaVersion", "coldstart-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", start.digest())
                .text("title", start.title())
                .flag("invented", start.invented())
                .text("schedule", start.schedule());
        phases(json, start.phases());
        json.number("from_K", start.from())
                .number("ambient_K", start.ambient())
                .number("hot_K", start.hot())
                .flag("logged", start.logged())
                .array("candidates");
        start.candidates().forEach(this::candidate);
        json.endArray();
        FindingsJson.verdicts(json, start.verdicts());
        FindingsJson.assumptions(json, start.assumptions(), names);
        FindingsJson.notices(json, start.notices());
        json.endObject();
    }

    static void phases(JsonText json, List<ColdStart.Phase> phases) {
        json.array("phases");
        for (ColdStart.Phase phase : phases) {
            json.element()
                    .text("state", phase.state())
                    .number("speed_rev_s", phase.speed())
                    .number("duration_s", phase.duration())
                    .number("heatToMetal_W", phase.heatToMetal())
                    .number("heatToOil_W", phase.heatToOil())
                    .endObject();
        }
        json.endArray();
    }

    private void candidate(ColdStartCandidate one) {
        json.element()
                .text("name", one.name())
                .text("status", one.status())
                .flag("hasValve", one.hasValve())
                .number("endTime_s", one.endTime())
                .number("fillTime_s", one.fillTime());
        band("openSeconds_s", one.band(StartQuantity.OPEN_SECONDS));
        band("openFilling_s", one.band(StartQuantity.OPEN_SECONDS_FILLING));
        band("openAfterFilling_s", one.band(StartQuantity.OPEN_SECONDS_AFTER));
        band("unfiltered_m3", one.band(StartQuantity.UNFILTERED));
        band("unfilteredFilling_m3", one.band(StartQuantity.UNFILTERED_FILLING));
        band("unfilteredAfterFilling_m3", one.band(StartQuantity.UNFILTERED_AFTER));
        band("filtered_m3", one.band(StartQuantity.FILTERED));
        band("pumped_m3", one.band(StartQuantity.PUMPED));
        band("greatestDrop_Pa", one.band(StartQuantity.PEAK_DROP));
        band("closingTime_s", one.band(StartQuantity.CLOSING_TIME));
        band("hotTime_s", one.band(StartQuantity.HOT_TIME));
        json.flag("openAtEnd", one.openAtEnd())
                .number("unfilteredShare", one.bypassShare())
                .number("greatestRatio", one.greatestRatio())
                .number("heatResidual", one.heatResidual())
                .array("parts");
        for (PartPeak part : one.parts()) {
            json.element().text("part", part.part());
            band("greatestDrop_Pa", part.drop());
            json.number("time_s", part.time()).endObject();
        }
        json.endArray().array("included");
        one.included().forEach(path -> json.text("", path));
        json.endArray().array("events");
        one.events().forEach(this::event);
        json.endArray().array("moments");
        one.moments().forEach(this::moment);
        json.endArray().endObject();
    }

    private void band(String name, StartBand band) {
        json.number(name, band.value()).number(name + "_low", band.low()).number(name + "_high", band.high());
    }

    private void event(Event event) {
        json.element()
                .number("time_s", event.time())
                .text("kind", event.kind())
                .whole("which", event.which())
                .number("oil_K", event.oilTemperature())
                .number("pumpPressure_Pa", event.pumpPressure())
                .number("galleryPressure_Pa", event.galleryPressure())
                .number("valveDifference_Pa", event.valveDifference())
                .endObject();
    }

    private void moment(Moment moment) {
        json.element()
                .number("time_s", moment.time())
                .number("oil_K", moment.oilTemperature())
                .number("metal_K", moment.metalTemperature())
                .number("element_K", moment.elementTemperature())
                .number("pumpPressure_Pa", moment.pumpPressure())
                .number("galleryPressure_Pa", moment.galleryPressure())
                .number("filterDrop_Pa", moment.filterDrop())
                .number("valveDifference_Pa", moment.valveDifference())
                .number("openingPressure_Pa", moment.openingPressure())
                .number("mediumFlow_m3_s", moment.mediumFlow())
                .number("bypassFlow_m3_s", moment.bypassFlow())
                .number("bypassShare", moment.bypassShare())
                .endObject();
    }
}
