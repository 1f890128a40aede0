package org.coldpleat.ui.desktop.view;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words of the window, by key. */
final class WindowTexts {
    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle("org.coldpleat.ui.desktop.view.window", Locale.ROOT);

    private WindowTexts() {}

    static String get(String key, String... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }
}
