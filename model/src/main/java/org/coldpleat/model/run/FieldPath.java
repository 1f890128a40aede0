package org.coldpleat.model.run;

import java.util.regex.Pattern;

/** Compares the path of a value with a field of a table. */
final class FieldPath {
    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");

    private FieldPath() {}

    /** True if the path, its list indexes left out, is the field or ends with it. */
    static boolean endsWith(String path, String field) {
        String plain = INDEX.matcher(path).replaceAll("");
        return plain.equals(field) || plain.endsWith("." + field);
    }
}
