package org.coldpleat.ui.commandline.output;

import java.util.List;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** Verdicts, assumptions and notices as arrays of JSON objects. */
public final class FindingsJson {
    private FindingsJson() {}

    public static void verdicts(JsonText json, List<Verdict> verdicts) {
        json.array("verdicts");
        for (Verdict verdict : verdicts) {
            json.element()
                    .text("code", verdict.code())
                    .text("setting", verdict.setting())
                    .text("state", verdict.state());
            json.array("candidates");
            verdict.candidates().forEach(name -> json.text("", name));
            json.endArray()
                    .text("text", Sentences.of(verdict, UnitSystem.METRIC))
                    .endObject();
        }
        json.endArray();
    }

    /** Assumptions; {@code names} are those of all candidates of the case. */
    public static void assumptions(JsonText json, List<Assumption> assumptions, List<String> names) {
        json.array("assumptions");
        for (Assumption assumption : assumptions) {
            json.element()
                    .text("path", assumption.path())
                    .text("candidate", assumption.candidate() < 0 ? "" : names.get(assumption.candidate()))
                    .text("kind", assumption.value().kind().name())
                    .number("value", assumption.value().value())
                    .number("low", assumption.value().low())
                    .number("high", assumption.value().high())
                    .text("unit", assumption.value().kind().siUnit())
                    .text("provenance", assumption.value().provenance().name())
                    .text("code", assumption.code())
                    .text("text", Sentences.assumption(assumption.code()))
                    .endObject();
        }
        json.endArray();
    }

    public static void notices(JsonText json, List<Notice> notices) {
        json.array("notices");
        notices.forEach(notice -> NoticeJson.write(json, notice));
        json.endArray();
    }
}
