package org.coldpleat.ui.commandline.evidence;

import java.util.List;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.commandline.output.NoticeJson;
import org.coldpleat.ui.text.ProgramVersion;

/** What is known of the candidates as JSON in coherent SI, described by {@code evidence-v1.schema.json}. */
final class EvidenceJson {
    private EvidenceJson() {}

    static String of(String title, boolean invented, List<EvidenceReport> reports) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "evidence-v1")
                .text("programVersion", ProgramVersion.text())
                .text("title", title)
                .flag("invented", invented)
                .array("candidates");
        for (EvidenceReport report : reports) {
            json.element().text("name", report.candidate()).array("tests");
            report.tests().forEach(test -> test(json, test));
            json.endArray().array("combined");
            report.combined().forEach(combined -> combined(json, combined));
            json.endArray().endObject();
        }
        return json.endArray().endObject().finished();
    }

    private static void test(JsonText json, TestReport test) {
        json.element()
                .text("test", test.test())
                .text("status", test.status())
                .whole("readings", test.count())
                .array("values");
        test.values()
                .forEach(value -> json.element()
                        .text("quantity", value.key())
                        .text("unit", value.value().kind().siUnit())
                        .number("value", value.value().value())
                        .number("standardUncertainty", value.value().standardUncertainty())
                        .endObject());
        json.endArray().array("steps");
        test.steps()
                .forEach(step -> json.element()
                        .text("step", step.name())
                        .number("relativeSize", step.relativeSize())
                        .number("relativeStandardUncertainty", step.lnSigma())
                        .endObject());
        json.endArray()
                .numbers(
                        "outliers",
                        test.outliers().stream().mapToDouble(row -> row + 1).toArray())
                .array("residuals");
        test.residuals()
                .forEach(one -> json.element()
                        .number("flow_m3_s", one.flow())
                        .number("reading_Pa", one.reading())
                        .number("residual_Pa", one.residual())
                        .flag("outlier", one.outlier())
                        .endObject());
        json.endArray().array("notices");
        test.notices().forEach(notice -> NoticeJson.write(json, notice));
        json.endArray().endObject();
    }

    private static void combined(JsonText json, EvidenceReport.Combined combined) {
        json.element()
                .text("quantity", combined.quantity())
                .text("unit", combined.kind().siUnit())
                .number("median", combined.median())
                .number("lnStandardUncertainty", combined.lnSigma())
                .number("birgeRatio", combined.birgeRatio())
                .flag("conflict", combined.conflict())
                .array("sources");
        combined.members()
                .forEach(member -> json.element()
                        .text("source", member.name())
                        .text("label", member.label())
                        .number("median", member.median())
                        .number("lnStandardUncertainty", member.lnSigma())
                        .number("weight", member.weight())
                        .flag("apart", member.apart())
                        .endObject());
        json.endArray().endObject();
    }
}
