package org.coldpleat.shared.notice;

import java.util.List;
import java.util.Set;
import org.coldpleat.shared.quantity.UnitSystem;

/** Turns notices into sentences. */
public final class NoticeText {
    private static final Wording WORDING = Wording.beside(NoticeText.class, "notices");

    private NoticeText() {}

    /** The sentence of a notice without its place, in the units of a system; the bare code and values if it has no text. */
    public static String sentence(Notice notice, UnitSystem system) {
        return WORDING.text(notice.code(), notice.values(), system);
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
