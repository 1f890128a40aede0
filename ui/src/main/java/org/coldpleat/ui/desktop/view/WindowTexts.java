package org.coldpleat.ui.desktop.view;

import org.coldpleat.shared.notice.Wording;

/** Words of the window, by key. */
final class WindowTexts {
    private static final Wording TEXTS = Wording.beside(WindowTexts.class, "window");

    private WindowTexts() {}

    static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }
}
