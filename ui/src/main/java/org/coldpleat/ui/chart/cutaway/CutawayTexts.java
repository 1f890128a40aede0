package org.coldpleat.ui.chart.cutaway;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words in the cutaway drawing, by key. */
final class CutawayTexts {
    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle("org.coldpleat.ui.chart.cutaway.cutaway", Locale.ROOT);

    private CutawayTexts() {}

    static String get(String key, String... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }
}
