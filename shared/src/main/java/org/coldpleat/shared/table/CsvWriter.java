package org.coldpleat.shared.table;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.source.Source;

/**
 * Writes comma-separated values (RFC 4180, but lines end with a line feed) with a decimal point. Cells are quoted where any
 * usual separator, a quote, a line end or a blank edge would make a reader see something else.
 */
@Source("RFC 4180 (2005), section 2; the apostrophe is common practice, no source")
public final class CsvWriter {
    /** What a spreadsheet takes for the start of a formula. */
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private static final String QUOTED = ",;\"\n\r\t";

    private final StringBuilder written = new StringBuilder();
    private final List<String> row = new ArrayList<>();

    /** A cell as it stands. */
    public CsvWriter cell(String value) {
        boolean quoted = value.chars().anyMatch(c -> QUOTED.indexOf(c) >= 0)
                || !value.strip().equals(value);
        row.add(quoted ? '"' + value.replace("\"", "\"\"") + '"' : value);
        return this;
    }

    /** A text; one that a spreadsheet would take for a formula gets an apostrophe in front. */
    public CsvWriter text(String value) {
        return cell(startsFormula(value) ? "'" + value : value);
    }

    /** True if a spreadsheet would take a text for a formula. */
    public static boolean startsFormula(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    }

    /** A number in full precision, a minus sign included; an empty cell where there is none. */
    public CsvWriter number(double value) {
        row.add(Double.isFinite(value) ? Double.toString(value) : "");
        return this;
    }

    /** Ends the row. */
    public CsvWriter endRow() {
        written.append(String.join(",", row)).append('\n');
        row.clear();
        return this;
    }

    /** All rows ended so far. */
    public String finished() {
        return written.toString();
    }
}
