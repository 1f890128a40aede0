package org.coldpleat.ui.commandline.argument;

/** How rows of numbers can be written. */
public enum RowsFormat {
    /** A table for a spreadsheet. */
    CSV,
    /** JSON in coherent SI. */
    JSON
}
