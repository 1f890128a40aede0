package org.coldpleat.ui.commandline.output;

import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** A notice as a JSON object. */
public final class NoticeJson {
    private NoticeJson() {}

    public static void write(JsonText json, Notice notice) {
        json.element()
                .text("code", notice.code())
                .text("severity", notice.severity().name())
                .text("place", notice.place())
                .text("text", Sentences.of(notice, UnitSystem.METRIC))
                .endObject();
    }
}
