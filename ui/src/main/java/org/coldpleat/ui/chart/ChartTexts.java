package org.coldpleat.ui.chart;

import java.util.Locale;
import java.util.ResourceBundle;

/** Words in the charts, by key. */
final class ChartTexts {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("org.coldpleat.ui.chart.charts", Locale.ROOT);

    private ChartTexts() {}

    static String get(String key, String... values) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }
}
