package org.coldpleat.shared.table;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.coldpleat.shared.source.Source;

/**
 * Reads a table of cells with quotes as in RFC 4180. The separator is the semicolon if the first line has one outside
 * quotes, else the tab if it has one, else the comma; lines end with any of the usual line ends.
 */
@Source("RFC 4180 (2005), section 2")
public final class CsvReader {
    /**
     * One line of the table; it may go over several lines of the text.
     *
     * @param number line of the text it starts in, from 1
     * @param cells cells as they stand, without their quotes
     */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * What was read.
     *
     * @param lines all lines that are not blank
     * @param openQuote line of the text with a quote that is never closed
     */
    public record Table(List<Line> lines, OptionalInt openQuote) {
        public Table {
            lines = List.copyOf(lines);
        }
    }

    private CsvReader() {}

    /** Reads a text, with or without a byte order mark. */
    public static Table read(String text) {
        String body = text.startsWith("\ufeff") ? text.substring(1) : text;
        char separator = separator(body);
        List<Line> lines = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int number = 1;
        int start = 1;
        int quoteLine = 1;
        for (int i = 0; i <= body.length(); i++) {
            char c = i < body.length() ? body.charAt(i) : '\n';
            boolean lineEnd = c == '\n' || (c == '\r' && !body.startsWith("\n", i + 1));
            if (quoted && i < body.length()) {
                if (c == '"' && body.startsWith("\"", i + 1)) {
                    cell.append('"');
                    i++;
                } else if (c == '"') {
                    quoted = false;
                } else {
                    cell.append(c);
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                quoted = true;
                quoteLine = number;
                cell.setLength(0);
            } else if (c == separator || lineEnd) {
                cells.add(cell.toString());
                cell.setLength(0);
                if (lineEnd) {
                    if (cells.stream().anyMatch(one -> !one.isBlank())) {
                        lines.add(new Line(start, cells));
                    }
                    cells.clear();
                    start = number + 1;
                }
            } else if (c != '\r') {
                cell.append(c);
            }
            number += lineEnd ? 1 : 0;
        }
        return new Table(lines, quoted ? OptionalInt.of(quoteLine) : OptionalInt.empty());
    }

    private static char separator(String body) {
        boolean quoted = false;
        boolean tab = false;
        for (int i = 0; i < body.length() && body.charAt(i) != '\n'; i++) {
            char c = body.charAt(i);
            quoted ^= c == '"';
            if (c == ';' && !quoted) {
                return ';';
            }
            tab |= c == '\t' && !quoted;
        }
        return tab ? '\t' : ',';
    }
}
