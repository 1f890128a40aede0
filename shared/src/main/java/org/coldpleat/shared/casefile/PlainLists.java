package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;

/**
 * Makes {@code thickness: [0.78, 0.81] mm} readable: YAML allows nothing behind a list in brackets, so such values are
 * put in quotes. Lines stay lines, and columns are counted back to the text as written.
 */
final class PlainLists {
    private static final Pattern VALUE = Pattern.compile("[\\w\"']\\s*:\\s+(?=\\[)");
    private static final Pattern BLOCK = Pattern.compile("^( *)(?:- +)*[^#\"'{\\[]*:\\s*[>|][-+0-9]*\\s*(?:#.*)?$");
    private static final Pattern OPEN_QUOTE =
            Pattern.compile("(?:[:,]\\s+|-\\s+|[\\[{]\\s*)(?:\"(?:[^\"\\\\]|\\\\.)*|'(?:[^']|'')*)$");

    private final String text;
    private final List<String> written;
    private final Map<Integer, List<Integer>> added;
    private final int[] offsets;

    private PlainLists(String text, List<String> written, Map<Integer, List<Integer>> added) {
        this.text = text;
        this.written = written;
        this.added = added;
        this.offsets = offsets(text);
    }

    static PlainLists of(String text) {
        List<String> lines = List.of(text.split("\r\n|\r|\n", -1));
        Map<Integer, List<Integer>> added = new HashMap<>();
        StringBuilder out = new StringBuilder(text.length() + 64);
        int block = -1;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            int indent = line.length() - line.stripLeading().length();
            if (block >= 0 && !line.isBlank() && indent <= block) {
                block = -1;
            }
            if (block < 0) {
                Matcher start = BLOCK.matcher(line);
                if (start.matches()) {
                    block = start.group(1).length();
                } else {
                    line = quote(line, i, added);
                }
            }
            out.append(line).append(i + 1 < lines.size() ? "\n" : "");
        }
        return new PlainLists(out.toString(), lines, added);
    }

    private static String quote(String line, int number, Map<Integer, List<Integer>> added) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        Matcher value = VALUE.matcher(line);
        while (value.find(Math.min(from, line.length()))) {
            int open = value.end();
            int close = line.indexOf(']', open);
            boolean nested = line.indexOf('[', open + 1) >= 0 && line.indexOf('[', open + 1) < close;
            int end = close < 0 || nested ? -1 : endOfValue(line, open, close + 1);
            if (end < 0 || isNothing(line.substring(close + 1, end)) || commented(line, open)) {
                out.append(line, from, open);
                from = open;
                if (close < 0) {
                    break;
                }
                continue;
            }
            String list = line.substring(open, end).stripTrailing();
            out.append(line, from, open)
                    .append('\'')
                    .append(list.replace("'", "''"))
                    .append('\'');
            added.computeIfAbsent(number, n -> new ArrayList<>()).add(open);
            added.get(number).add(open + list.length());
            from = open + list.length();
        }
        return out.append(line, from, line.length()).toString();
    }

    private static boolean isNothing(String rest) {
        return rest.isBlank() || rest.strip().equals(",");
    }

    private static int endOfValue(String line, int open, int from) {
        boolean inline = depth(line, open) > 0;
        for (int i = from; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean comment = c == '#' && line.charAt(i - 1) == ' ';
            if (comment || (inline && (c == ',' || c == '}' || c == ']'))) {
                return i;
            }
            if (c == '[' || c == ']' || c == ':') {
                return -1;
            }
        }
        return line.length();
    }

    private static int depth(String line, int until) {
        int depth = 0;
        for (int i = 0; i < until; i++) {
            depth += line.charAt(i) == '{' ? 1 : line.charAt(i) == '}' ? -1 : 0;
        }
        return depth;
    }

    private static boolean commented(String line, int until) {
        int hash = line.indexOf('#');
        return hash >= 0 && hash < until && (hash == 0 || line.charAt(hash - 1) == ' ');
    }

    /** The text with such lists in quotes. */
    String text() {
        return text;
    }

    /** Column of a mark in the text as written, from 1. */
    int column(Mark mark) {
        int column = mark.getColumn();
        int before = 0;
        for (int place : added.getOrDefault(mark.getLine(), List.of())) {
            if (place + before < column) {
                before++;
            }
        }
        return column - before + 1;
    }

    /** A line as written, counted from 0. */
    String line(int number) {
        return number >= 0 && number < written.size() ? written.get(number) : "";
    }

    /** The first line from 0 up to a given one with a value in quotes that does not end on it; -1 if there is none. */
    int openQuote(int until) {
        for (int i = 0; i <= until && i < written.size(); i++) {
            if (OPEN_QUOTE.matcher(written.get(i)).find()) {
                return i;
            }
        }
        return -1;
    }

    /** Index in the text of each code point, and of its end: marks count code points. */
    private static int[] offsets(String text) {
        int[] offsets = new int[text.codePointCount(0, text.length()) + 1];
        int at = 0;
        for (int i = 0; i < offsets.length - 1; i++) {
            offsets[i] = at;
            at += Character.charCount(text.codePointAt(at));
        }
        offsets[offsets.length - 1] = at;
        return offsets;
    }

    /** The text between two marks. */
    String slice(Mark start, Mark end) {
        return text.substring(offsets[start.getIndex()], offsets[end.getIndex()]);
    }
}
