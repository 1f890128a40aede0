package org.coldpleat.ui.desktop.view.part;

import org.coldpleat.shared.notice.Wording;

/** Words of the window, by key. */
public final class WindowTexts {
    private static final Wording TEXTS = Wording.beside(WindowTexts.class, "window");

    private WindowTexts() {}

    public static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }
}
