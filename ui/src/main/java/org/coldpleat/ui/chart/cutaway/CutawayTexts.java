package org.coldpleat.ui.chart.cutaway;

import org.coldpleat.shared.notice.Wording;

/** Words in the cutaway drawing, by key. */
final class CutawayTexts {
    private static final Wording TEXTS = Wording.beside(CutawayTexts.class, "cutaway");

    private CutawayTexts() {}

    static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }
}
