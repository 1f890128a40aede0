package org.coldpleat.shared.notice;

import java.util.List;
import java.util.Set;

/** Turns notices into sentences. */
public final class NoticeText {
    private static final Wording WORDING = Wording.beside(NoticeText.class, "notices");

    private NoticeText() {}

    /** The sentence of a notice with its place in front; the bare code and values if the bundle lacks its text. */
    public static String render(Notice notice) {
        String sentence = sentence(notice);
        return notice.place().isEmpty() ? sentence : notice.place() + ": " + sentence;
    }

    /** The sentence of a notice without its place. */
    public static String sentence(Notice notice) {
        return text(notice.code(), notice.values());
    }

    /** The text of a code with its values. */
    public static String text(String code, List<String> values) {
        return WORDING.text(code, values);
    }

    /** True if the bundle has a text for the code. */
    public static boolean has(String code) {
        return WORDING.has(code);
    }

    /** All codes that have a text. */
    public static Set<String> codes() {
        return WORDING.codes();
    }
}
