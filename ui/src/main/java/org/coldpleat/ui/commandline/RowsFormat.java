package org.coldpleat.ui.commandline;

/** How rows of numbers can be written. */
enum RowsFormat {
    /** A table for a spreadsheet. */
    CSV,
    /** JSON in coherent SI. */
    JSON
}
