package org.coldpleat.ui.service;

import java.util.Locale;

/** Field paths of a case as words for a reader. */
public final class FieldWords {
    private FieldWords() {}

    /** A path as words: {@code basePlate.inletHoles.count} is "base plate, inlet holes, count". */
    public static String of(String path) {
        return path.replaceAll("([a-z])([A-Z])", "$1 $2")
                .replace("].", " ")
                .replace("[", " ")
                .replace("]", "")
                .replace(".", ", ")
                .toLowerCase(Locale.ROOT);
    }
}
