package org.coldpleat.ui.chart.style;

import org.coldpleat.shared.notice.Wording;

/** Words in the charts, by key. */
public final class ChartTexts {
    private static final Wording TEXTS = Wording.beside(ChartTexts.class, "charts");

    private ChartTexts() {}

    public static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }
}
