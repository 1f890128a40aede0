package org.coldpleat.model.typical;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the row of a table for the path of a value: the row whose field is the path, or the longest end of it. */
public final class FieldPath {
    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");

    private FieldPath() {}

    /**
     * Row for a path.
     *
     * @param rows rows by field, without list indexes
     * @param path full path of a value, such as {@code candidates[1].medium.thickness}
     */
    public static <T> Optional<T> find(Map<String, T> rows, String path) {
        String end = INDEX.matcher(path).replaceAll("");
        while (true) {
            T row = rows.get(end);
            if (row != null) {
                return Optional.of(row);
            }
            int point = end.indexOf('.');
            if (point < 0) {
                return Optional.empty();
            }
            end = end.substring(point + 1);
        }
    }
}
