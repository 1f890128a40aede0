package org.coldpleat.ui.report.section;

import org.coldpleat.shared.notice.Wording;

/** Words of the report, by key. */
public final class ReportTexts {
    private static final Wording TEXTS = Wording.beside(ReportTexts.class, "report");

    private ReportTexts() {}

    public static String get(String key, String... values) {
        return TEXTS.filled(key, values);
    }

    /** The text of a key made of data; a key without text stands for itself. */
    static String getOr(String key, String otherwise) {
        return TEXTS.patternOr(key, otherwise);
    }
}
