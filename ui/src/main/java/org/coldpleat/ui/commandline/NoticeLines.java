package org.coldpleat.ui.commandline;

import org.coldpleat.shared.notice.Notice;
import org.coldpleat.ui.service.Sentences;

/** A notice as one line: where, then what. */
final class NoticeLines {
    private NoticeLines() {}

    static String of(Notice notice) {
        String text = Sentences.of(notice);
        return notice.place().isEmpty() ? text : Texts.get("notice.at", notice.place(), text);
    }
}
