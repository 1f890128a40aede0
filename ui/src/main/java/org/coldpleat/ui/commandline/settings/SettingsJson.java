package org.coldpleat.ui.commandline.settings;

import java.util.List;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsResult.AfterStart;
import org.coldpleat.model.sizing.SettingsResult.Candidate;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.ui.commandline.output.FindingsJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.ProgramVersion;

/** Settings side by side as JSON, described by {@code settings-v1.schema.json}. */
final class SettingsJson {
    private final JsonText json = new JsonText();

    private SettingsJson() {}

    static String of(SettingsResult result, List<String> names) {
        SettingsJson writer = new SettingsJson();
        writer.write(result, names);
        return writer.json.finished();
    }

    private void write(SettingsResult result, List<String> names) {
        json.element()
                .text("schemaVersion", "settings-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", result.digest())
                .text("title", result.title())
                .flag("invented", result.invented());
        if (result.start().isPresent()) {
            json.object("start")
                    .text("schedule", result.start().get().schedule())
                    .number("from_K", result.start().get().from())
                    .endObject();
        } else {
            json.nothing("start");
        }
        json.array("candidates");
        for (Candidate one : result.candidates()) {
            json.element()
                    .text("name", one.name())
                    .number("measured_Pa", one.measured())
                    .flag("inBlock", one.inBlock())
                    .array("rows");
            one.rows().forEach(row -> row(result, row));
            json.endArray().endObject();
        }
        json.endArray();
        FindingsJson.verdicts(json, result.verdicts());
        FindingsJson.assumptions(json, result.assumptions(), names);
        FindingsJson.notices(json, result.notices());
        json.endObject();
    }

    private void row(SettingsResult result, Row row) {
        json.element()
                .number("setting_Pa", row.setting())
                .flag("measured", row.measured())
                .array("openings");
        for (int s = 0; s < result.states().size(); s++) {
            OpeningBand band = row.openings().get(s);
            double value = band.value();
            String answer =
                    Double.isNaN(value) ? "NONE" : Double.isFinite(value) ? "BELOW" : value > 0 ? "ALWAYS" : "NEVER";
            json.element()
                    .text("state", result.states().get(s))
                    .text("opening", answer)
                    .number("opening_K", value)
                    .number("low_K", band.low())
                    .number("high_K", band.high())
                    .endObject();
        }
        json.endArray();
        if (row.afterStart().isPresent()) {
            AfterStart start = row.afterStart().get();
            json.object("afterStart")
                    .flag("completed", start.completed())
                    .number("bypassShare", start.bypassShare())
                    .number("open_s", start.openSeconds())
                    .number("unfiltered_m3", start.unfilteredVolume())
                    .number("elementPeak_Pa", start.elementPeak())
                    .endObject();
        } else {
            json.nothing("afterStart");
        }
        json.object("overRange")
                .number("elementPeak_Pa", row.overRange().pressure())
                .number("temperature_K", row.overRange().temperature())
                .text("state", row.overRange().state())
                .endObject()
                .endObject();
    }
}
