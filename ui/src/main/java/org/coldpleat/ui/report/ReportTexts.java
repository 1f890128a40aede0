package org.coldpleat.ui.report;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words of the report, by key. */
final class ReportTexts {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("org.coldpleat.ui.report.report", Locale.ROOT);

    private ReportTexts() {}

    static String get(String key, String... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }

    /** The text of a key made of data; a key without text stands for itself. */
    static String getOr(String key, String otherwise) {
        return TEXTS.containsKey(key) ? TEXTS.getString(key) : otherwise;
    }
}
