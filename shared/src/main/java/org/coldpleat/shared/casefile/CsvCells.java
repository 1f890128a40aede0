package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.source.Source;

/** The cells of a comma-separated table, with quotes as in RFC 4180. */
@Source("RFC 4180 (2005), section 2")
final class CsvCells {
    /** One line of the table; it may go over several lines of the file. */
    record Line(int number, List<String> cells) {
        Line {
            cells = List.copyOf(cells);
        }
    }

    private CsvCells() {}

    static String line(List<String> cells) {
        StringBuilder text = new StringBuilder();
        for (String cell : cells) {
            boolean quoted =
                    cell.chars().anyMatch(c -> c == ',' || c == ';' || c == '"' || c == '\n' || c == '\r' || c == '\t')
                            || !cell.strip().equals(cell);
            text.append(text.length() == 0 ? "" : ",").append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        return text.append('\n').toString();
    }

    /** All lines that are not blank; a quote that is never closed is noted. */
    static List<Line> read(String text, Problems problems) {
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
        if (quoted) {
            problems.add(quoteLine, 0, "sheet.quoteOpen");
        }
        return lines;
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
