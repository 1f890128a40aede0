package org.coldpleat.ui.commandline.engine;

import org.coldpleat.model.certainty.EngineProfile;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Coverage;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.Texts;

/** An engine as JSON in coherent SI, described by {@code engine-v1.schema.json}. */
final class EngineJson {
    private EngineJson() {}

    static String of(OpenedCase opened, EngineProfile profile) {
        Section engine = opened.document().root().section("engine").orElseThrow();
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "engine-v1")
                .text("programVersion", ProgramVersion.text())
                .text("kind", engine.choice("kind").orElseThrow())
                .number(
                        "displacement_m3",
                        engine.quantity("displacement").orElseThrow().value())
                .array("values");
        profile.values()
                .forEach(one -> json.element()
                        .text("path", one.path())
                        .text("words", FieldWords.of(one.path()))
                        .text("unit", one.value().kind().siUnit())
                        .number("value", one.value().value())
                        .number("low", one.value().low())
                        .number("high", one.value().high())
                        .flag("stated", one.isStated())
                        .text("sureness", one.sureness())
                        .text("surenessWords", EngineText.sure(one))
                        .text("source", one.source())
                        .endObject());
        json.endArray()
                .object("coldAnswer")
                .text("state", profile.state())
                .number("temperature_K", profile.temperature())
                .number("ratio", profile.ratio())
                .number("factor95", factor(profile.lnSigma()))
                .number("engineFactor95", factor(profile.engineLnSigma()))
                .endObject()
                .array("questions");
        profile.questions()
                .forEach(one -> json.element()
                        .text("about", one.about())
                        .text("text", Texts.get("engine.question." + one.about()))
                        .number("engineVarianceShare", one.share())
                        .number("engineFactor95After", factor(one.lnSigmaAfter()))
                        .endObject());
        return json.endArray().endObject().finished();
    }

    private static double factor(double lnSigma) {
        return Math.exp(Coverage.COVERAGE_95 * lnSigma);
    }
}
