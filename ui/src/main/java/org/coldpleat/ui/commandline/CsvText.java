package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.source.Source;

/**
 * Comma-separated values (RFC 4180, but lines end with a line feed) with a decimal point. A text that a spreadsheet would take for a formula gets an
 * apostrophe in front; numbers are left as they are, a minus sign included.
 */
@Source("RFC 4180 (2005), section 2; the apostrophe is common practice, no source")
final class CsvText {
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringBuilder text = new StringBuilder();
    private final List<String> row = new ArrayList<>();

    CsvText text(String value) {
        boolean formula = !value.isEmpty() && FORMULA_STARTS.indexOf(value.charAt(0)) >= 0;
        String harmless = formula ? "'" + value : value;
        boolean quoted = harmless.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        row.add(quoted ? '"' + harmless.replace("\"", "\"\"") + '"' : harmless);
        return this;
    }

    /** A number in full precision; an empty cell where there is none. */
    CsvText number(double value) {
        row.add(Double.isFinite(value) ? Double.toString(value) : "");
        return this;
    }

    CsvText endRow() {
        text.append(String.join(",", row)).append("\n");
        row.clear();
        return this;
    }

    String finished() {
        return text.toString();
    }
}
