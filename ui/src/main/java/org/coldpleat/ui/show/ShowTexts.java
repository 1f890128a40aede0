package org.coldpleat.ui.show;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words on the pictures, by key. */
final class ShowTexts {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("org.coldpleat.ui.show.show", Locale.ROOT);

    private ShowTexts() {}

    static String get(String key, String... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }
}
