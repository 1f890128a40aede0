package org.coldpleat.ui.desktop.view.bench;

/** What can be done to a case from a sheet. */
interface SheetEdits {
    /** Writes what was typed into a field or into a part of a quantity. */
    void write(String path, String typed);

    /** Adds an entry to a list. */
    void another(String list);

    /** Takes an entry out of its list. */
    void without(String entry);
}
