package org.coldpleat.ui.commandline.point;

import org.coldpleat.model.steady.PointResult;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.commandline.output.NoticeJson;
import org.coldpleat.ui.text.ProgramVersion;

/** One operating point as JSON in coherent SI, described by {@code point-v1.schema.json}. */
final class PointJson {
    private PointJson() {}

    static String of(PointResult point) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "point-v1")
                .text("programVersion", ProgramVersion.text())
                .text("candidate", point.candidate())
                .text("setting", point.setting())
                .text("state", point.state())
                .text("status", point.status())
                .number("temperature_K", point.temperature())
                .number("flow_m3_s", point.flow())
                .number("pressureDrop_Pa", point.pressureDrop())
                .number("elementPressureDrop_Pa", point.elementPressureDrop())
                .array("parts");
        point.parts()
                .forEach(part -> json.element()
                        .text("name", part.name())
                        .number("pressureDrop_Pa", part.pressureDrop())
                        .endObject());
        json.endArray();
        bypass(json, point);
        json.object("oil")
                .number("kinematicViscosity_m2_s", point.oil().kinematicViscosity())
                .number("dynamicViscosity_Pa_s", point.oil().dynamicViscosity())
                .number("density_kg_m3", point.oil().density())
                .endObject();
        point.engine()
                .ifPresent(engine -> json.number("pumpPressure_Pa", engine.pumpPressure())
                        .number("galleryPressure_Pa", engine.galleryPressure())
                        .number("pumpFlow_m3_s", engine.pumpFlow())
                        .number("reliefFlow_m3_s", engine.reliefFlow())
                        .number("galleryFlow_m3_s", engine.galleryFlow())
                        .number("filmTemperature_K", engine.filmTemperature()));
        json.number("flowResidual", point.flowResidual())
                .number("pressureResidual", point.pressureResidual())
                .array("notices");
        point.notices().forEach(notice -> NoticeJson.write(json, notice));
        return json.endArray().endObject().finished();
    }

    /** The bypass valve at an operating point; null without one. */
    static void bypass(JsonText json, PointResult point) {
        point.bypass()
                .ifPresentOrElse(
                        bypass -> json.object("bypass")
                                .flag("open", bypass.open())
                                .number("flow_m3_s", bypass.flow())
                                .number("share", bypass.share())
                                .number("pressureDrop_Pa", bypass.pressureDrop())
                                .number("openingPressure_Pa", bypass.openingPressure())
                                .endObject(),
                        () -> json.nothing("bypass"));
    }
}
