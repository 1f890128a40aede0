package org.coldpleat.ui.desktop.viewmodel;

import java.util.Objects;
import org.coldpleat.shared.casefile.catalog.Field;

/**
 * One line of a sheet.
 *
 * @param type what the line is
 * @param path full path in the case, such as {@code candidates[0].pleats.count}
 * @param depth how far it is set in
 * @param field what the catalog says of it
 * @param label what to call it
 * @param typed the text as it stands in the case, understood or not; blank if unknown
 * @param plusMinus spread that stands beside the value
 * @param provenance word for where the value comes from, if that stands beside it
 * @param note remark that stands beside the value
 * @param problem why it is not understood; blank if it is
 */
public record SheetRow(
        Type type,
        String path,
        int depth,
        Field field,
        String label,
        String typed,
        String plusMinus,
        String provenance,
        String note,
        String problem) {
    /** What a line of a sheet is. */
    public enum Type {
        /** Begins a section. */
        SECTION,
        /** Begins an entry of a list. */
        ENTRY,
        /** Stands behind the entries of a list, where another one can be added. */
        ANOTHER,
        /** Holds a value. */
        VALUE
    }

    public SheetRow {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(typed, "typed");
        Objects.requireNonNull(problem, "problem");
    }

    /** True if something stands beside the value. */
    public boolean isSpelledOut() {
        return !plusMinus.isEmpty() || !provenance.isEmpty() || !note.isEmpty();
    }
}
