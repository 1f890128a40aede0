package org.coldpleat.ui.desktop.viewmodel;

import java.util.Objects;

/**
 * One quantity of a bench sheet.
 *
 * @param path full path in the case, such as {@code candidates[0].pleats.count}
 * @param label path within the sheet in words
 * @param written the text as it stands in the case, or as it was typed if that was not understood
 * @param problem why the text is not understood; empty if it is
 */
public record SheetField(String path, String label, String written, String problem) {
    public SheetField {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(problem, "problem");
    }
}
