package org.coldpleat.ui.commandline;

import java.util.List;
import org.coldpleat.model.run.Assumption;
import org.coldpleat.model.run.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.ui.service.Sentences;

/** The lists that end a result, as JSON. */
final class ListsJson {
    private ListsJson() {}

    static void verdicts(JsonText json, List<Verdict> verdicts) {
        json.array("verdicts");
        for (Verdict verdict : verdicts) {
            json.element()
                    .text("code", verdict.code())
                    .text("text", Sentences.of(verdict).strip())
                    .endObject();
        }
        json.endArray();
    }

    static void assumptions(JsonText json, List<Assumption> assumptions) {
        json.array("assumptions");
        for (Assumption one : assumptions) {
            json.element()
                    .text("path", one.path())
                    .text("provenance", one.value().provenance().name())
                    .number("value", one.value().value())
                    .text("unit", one.value().kind().siUnit())
                    .text("text", Sentences.assumption(one.code()))
                    .endObject();
        }
        json.endArray();
    }

    static void notices(JsonText json, List<Notice> notices) {
        json.array("notices");
        notices.forEach(notice -> NoticeJson.write(json, notice));
        json.endArray();
    }
}
