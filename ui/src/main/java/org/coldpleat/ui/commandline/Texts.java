package org.coldpleat.ui.commandline;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** Texts of the command line, by key. A placeholder is a number in braces, counted from 0. */
final class Texts {
    /** Name of the bundle. */
    static final String BUNDLE = "org.coldpleat.ui.commandline.commandline";

    private static final ResourceBundle TEXTS = ResourceBundle.getBundle(BUNDLE, Locale.ROOT);

    private Texts() {}

    static ResourceBundle bundle() {
        return TEXTS;
    }

    static String get(String key, Object... values) {
        return fill(
                TEXTS.getString(key), Arrays.stream(values).map(String::valueOf).toList());
    }

    /** The text of a key made of data, such as the key of a part; a key without text stands for itself. */
    static String getOr(String key, String otherwise) {
        return TEXTS.containsKey(key) ? TEXTS.getString(key) : otherwise;
    }

    /** Puts values into the numbered places of a text, one pass, so that a value may hold braces itself. */
    static String fill(String pattern, List<String> values) {
        StringBuilder filled = new StringBuilder();
        int at = 0;
        while (at < pattern.length()) {
            int open = pattern.indexOf('{', at);
            int close = open < 0 ? -1 : pattern.indexOf('}', open);
            if (close < 0) {
                break;
            }
            String inside = pattern.substring(open + 1, close);
            filled.append(pattern, at, open);
            if (inside.matches("\\d{1,2}") && Integer.parseInt(inside) < values.size()) {
                filled.append(values.get(Integer.parseInt(inside)));
            } else {
                filled.append(pattern, open, close + 1);
            }
            at = close + 1;
        }
        return filled.append(pattern.substring(at)).toString();
    }
}
