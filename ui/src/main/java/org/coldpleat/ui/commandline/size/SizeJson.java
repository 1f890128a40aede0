package org.coldpleat.ui.commandline.size;

import java.util.List;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Condition;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.ui.commandline.output.FindingsJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.ProgramVersion;

/**
 * A size as JSON, described by {@code size-v1.schema.json}. The unit of a sized value is that of the variable: m2, 1, Pa,
 * 1/m, or for a grade its viscosity in Pa s.
 */
final class SizeJson {
    private final JsonText json = new JsonText();

    private SizeJson() {}

    static String of(SizingResult result, List<String> names) {
        SizeJson writer = new SizeJson();
        writer.write(result, names);
        return writer.json.finished();
    }

    private void write(SizingResult result, List<String> names) {
        json.element()
                .text("schemaVersion", "size-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", result.digest())
                .text("title", result.title())
                .flag("invented", result.invented())
                .text("candidate", result.candidate())
                .text("variable", result.variable().name())
                .object("target")
                .text("kind", result.target())
                .text("state", result.state())
                .number("temperature_K", result.temperature())
                .number("limit", result.limit())
                .endObject()
                .number("confidence", result.confidence().orElse(Double.NaN))
                .whole("draws", result.draws())
                .whole("seed", result.seed())
                .number("present", result.present())
                .array("conditions");
        result.conditions().forEach(this::condition);
        json.endArray();
        FindingsJson.verdicts(json, result.verdicts());
        FindingsJson.assumptions(json, result.assumptions(), names);
        FindingsJson.notices(json, result.notices());
        json.endObject();
    }

    private void condition(Condition condition) {
        json.element()
                .flag("loaded", condition.loaded())
                .number("dirt_kg", condition.dirt())
                .number("loadRatio", condition.loadRatio());
        answer("best", condition.best());
        json.object("band")
                .number("median", condition.band().median())
                .number("low", condition.band().low())
                .number("high", condition.band().high())
                .endObject();
        if (condition.sure().isEmpty()) {
            json.nothing("sure");
        } else {
            answer("sure", condition.sure().get(0));
        }
        opening("presentOpening", condition.presentOpening());
        json.number("presentChance", condition.presentChance())
                .number("unanswered", condition.unanswered())
                .number("lookedFrom", condition.low())
                .number("lookedTo", condition.high())
                .array("options");
        for (Option one : condition.options()) {
            json.element().text("name", one.label()).number("value", one.value());
            opening("opening", one.opening());
            json.flag("holds", one.holds())
                    .number("chance", one.chance())
                    .number("packResistance_1_m3", one.packResistance())
                    .number("crowdedShare", one.crowdedShare())
                    .endObject();
        }
        json.endArray().endObject();
    }

    private void answer(String name, Answer answer) {
        json.object(name)
                .text("status", answer.status().name())
                .text("name", answer.label())
                .number("value", answer.value());
        opening("opening", answer.opening());
        json.number("chance", answer.chance())
                .number("reachable", answer.reachable())
                .text("reachableName", answer.reachableLabel());
        opening("reachableOpening", answer.reachableOpening());
        json.endObject();
    }

    /** Warmest open temperature, with words where there is no number. */
    private void opening(String name, double kelvin) {
        String words =
                Double.isNaN(kelvin) ? "NONE" : Double.isInfinite(kelvin) ? kelvin > 0 ? "ALWAYS" : "NEVER" : "BELOW";
        json.text(name, words).number(name + "_K", kelvin);
    }
}
