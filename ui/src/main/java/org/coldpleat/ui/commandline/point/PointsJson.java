package org.coldpleat.ui.commandline.point;

import java.util.List;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.ProgramVersion;

/** Operating points of a case as JSON in coherent SI, described by {@code table-v1.schema.json}. */
final class PointsJson {
    private PointsJson() {}

    static String of(OpenedCase opened, List<PointResult> points) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "table-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", opened.document().digest())
                .text("title", opened.title())
                .flag("invented", opened.invented())
                .array("points");
        points.forEach(point -> write(json, point));
        return json.endArray().endObject().finished();
    }

    private static void write(JsonText json, PointResult point) {
        json.element()
                .text("candidate", point.candidate())
                .text("setting", point.setting())
                .text("state", point.state())
                .text("status", point.status())
                .number("temperature_K", point.temperature())
                .number("flow_m3_s", point.flow())
                .number("pressureDrop_Pa", point.pressureDrop());
        PointJson.bypass(json, point);
        json.endObject();
    }
}
