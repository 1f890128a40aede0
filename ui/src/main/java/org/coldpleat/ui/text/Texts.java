package org.coldpleat.ui.text;

import java.util.Arrays;
import java.util.ResourceBundle;
import org.coldpleat.shared.notice.Wording;

/** Texts of the command line, by key. A placeholder is a number in braces, counted from 0. */
public final class Texts {
    private static final ResourceBundle TEXTS = Wording.bundle(Texts.class, "texts");

    private Texts() {}

    public static ResourceBundle bundle() {
        return TEXTS;
    }

    public static String get(String key, Object... values) {
        return Wording.fill(
                TEXTS.getString(key), Arrays.stream(values).map(String::valueOf).toList());
    }

    /** The text of a key made of data, such as the key of a part; a key without text stands for itself. */
    public static String getOr(String key, String otherwise) {
        return TEXTS.containsKey(key) ? TEXTS.getString(key) : otherwise;
    }
}
