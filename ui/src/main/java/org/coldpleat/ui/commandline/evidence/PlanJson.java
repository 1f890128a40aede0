package org.coldpleat.ui.commandline.evidence;

import java.util.List;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.Texts;

/** A planned test as JSON in coherent SI, described by {@code plan-v1.schema.json}. */
final class PlanJson {
    private PlanJson() {}

    static String of(TestPlan plan) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "plan-v1")
                .text("programVersion", ProgramVersion.text())
                .text("candidate", plan.candidate())
                .text("test", plan.test())
                .text("prepare", Texts.get("plan.prepare." + plan.test()))
                .array("conditions");
        plan.conditions()
                .forEach(one -> json.element()
                        .text("condition", one.key())
                        .text("unit", one.value().kind().siUnit())
                        .number("value", one.value().value())
                        .endObject());
        json.endArray()
                .object("reading")
                .text("quantity", plan.reading().name())
                .text("unit", plan.reading().siUnit())
                .number("expected", plan.expected())
                .number("scaleStep", plan.resolution())
                .number("coarsestScaleStepWorthIt", plan.resolutionNeeded().orElse(Double.NaN))
                .endObject()
                .number("duration_s", plan.duration())
                .text("target", plan.target())
                .number("relativeStandardUncertaintyNow", plan.presentLnSigma())
                .number("relativeStandardUncertaintyReached", plan.reachedLnSigma())
                .array("cautions");
        plan.cautions()
                .forEach(caution -> json.element()
                        .text("code", caution)
                        .text("text", NoticeText.text(caution, List.of()))
                        .endObject());
        return json.endArray().endObject().finished();
    }
}
