package org.coldpleat.ui.text;

import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** A notice as one line: where, then what. */
public final class NoticeLines {
    private NoticeLines() {}

    public static String of(Notice notice, UnitSystem units) {
        String text = Sentences.of(notice, units);
        return notice.place().isEmpty() ? text : Texts.get("notice.at", notice.place(), text);
    }
}
