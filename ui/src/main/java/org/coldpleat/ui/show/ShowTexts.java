package org.coldpleat.ui.show;

import org.coldpleat.shared.notice.Wording;

/** Words on the pictures, by key. */
final class ShowTexts {
    private static final Wording TEXTS = Wording.beside(ShowTexts.class, "show");

    private ShowTexts() {}

    static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }
}
