package org.coldpleat.shared.casefile.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;

/**
 * Makes {@code thickness: [0.78, 0.81] mm} readable: YAML allows nothing behind a list in brackets, so such values are
 * put in quotes. Line ends stay as they are, and places are counted back to the text as written.
 */
final class PlainLists {
    private static final Pattern BLOCK_HEAD = Pattern.compile("[>|][-+0-9]*\\s*(?:#.*)?");
    private static final Pattern OPEN_QUOTE =
            Pattern.compile("(?:[:,]\\s+|-\\s+|[\\[{]\\s*)(?:\"(?:[^\"\\\\]|\\\\.)*|'(?:[^']|'')*)$");

    private final String source;
    private final List<String> written;
    private final StringBuilder out = new StringBuilder();
    /** Where in the new text a character was added, rising. */
    private final List<Integer> added = new ArrayList<>();

    private int depth;
    private char quote;
    private boolean tokenStart;
    private boolean behindColon;
    private int block = -1;
    private int[] offsets = {};

    private PlainLists(String source) {
        this.source = source;
        written = List.of(source.split("\r\n|\r|\n", -1));
    }

    static PlainLists of(String text) {
        PlainLists lists = new PlainLists(text);
        int at = 0;
        for (String line : lists.written) {
            lists.line(line);
            at += line.length();
            while (at < text.length() && lists.out.length() - lists.added.size() < nextLine(text, at)) {
                lists.out.append(text.charAt(lists.out.length() - lists.added.size()));
            }
            at = nextLine(text, at);
        }
        lists.offsets = offsets(lists.out.toString());
        return lists;
    }

    private static int nextLine(String text, int end) {
        return end >= text.length() ? end : end + (text.startsWith("\r\n", end) ? 2 : 1);
    }

    private void line(String line) {
        int indent = line.length() - line.stripLeading().length();
        if (block >= 0 && !line.isBlank() && indent <= block) {
            block = -1;
        }
        int from = 0;
        if (block < 0) {
            tokenStart = true;
            behindColon = false;
            int i = 0;
            while (i < line.length()) {
                if (quote != 0) {
                    i = quoted(line, i);
                } else if (isRemark(line, i)) {
                    break;
                } else {
                    int end = line.charAt(i) == '[' && tokenStart && behindColon ? endOfList(line, i) : -1;
                    if (end > 0) {
                        out.append(line, from, i);
                        append(line.substring(i, end).stripTrailing());
                        from = i + line.substring(i, end).stripTrailing().length();
                        tokenStart = false;
                        i = end;
                    } else {
                        character(line, i);
                        i = block >= 0 ? line.length() : i + 1;
                    }
                }
            }
        }
        out.append(line, from, line.length());
    }

    /** A list with its unit, in quotes. */
    private void append(String list) {
        added.add(out.length());
        out.append('\'');
        for (int i = 0; i < list.length(); i++) {
            char c = list.charAt(i);
            if (c == '\'') {
                added.add(out.length());
                out.append('\'');
            }
            out.append(c);
        }
        added.add(out.length());
        out.append('\'');
    }

    /** Index behind the next character of a value in quotes. */
    private int quoted(String line, int i) {
        char c = line.charAt(i);
        boolean next = i + 1 < line.length();
        if (quote == '"' && c == '\\') {
            return i + 2;
        }
        if (c == quote && quote == '\'' && next && line.charAt(i + 1) == '\'') {
            return i + 2;
        }
        if (c == quote) {
            quote = 0;
            tokenStart = false;
        }
        return i + 1;
    }

    private static boolean isRemark(String line, int i) {
        return line.charAt(i) == '#' && (i == 0 || Character.isWhitespace(line.charAt(i - 1)));
    }

    private void character(String line, int i) {
        char c = line.charAt(i);
        boolean gap = i + 1 >= line.length() || Character.isWhitespace(line.charAt(i + 1));
        boolean start = tokenStart;
        if (Character.isWhitespace(c) || (start && c == '-' && gap && depth == 0)) {
            return;
        }
        tokenStart = false;
        switch (c) {
            case '"', '\'' -> quote = start ? c : 0;
            case '{', '[' -> {
                if (start || depth > 0) {
                    depth++;
                    tokenStart = true;
                    behindColon = false;
                }
            }
            case '}', ']' -> depth = Math.max(0, depth - 1);
            case ',' -> {
                tokenStart = depth > 0;
                behindColon &= !tokenStart;
            }
            case ':' -> {
                boolean ends = gap || (depth > 0 && ",]}".indexOf(line.charAt(i + 1)) >= 0);
                tokenStart = ends;
                behindColon |= ends;
            }
            case '>', '|' -> {
                if (start && depth == 0 && BLOCK_HEAD.matcher(line.substring(i)).matches()) {
                    block = keyColumn(line);
                }
            }
            default -> {
                // a plain word goes on
            }
        }
    }

    /** Column of the key of a line, behind the dashes of list entries. */
    private static int keyColumn(String line) {
        int i = 0;
        while (i < line.length() && (line.charAt(i) == ' ' || (line.charAt(i) == '-' && line.startsWith("- ", i)))) {
            i++;
        }
        return i;
    }

    /** Index behind a list in brackets with a unit behind it; -1 if it is a plain list or none. */
    private int endOfList(String line, int open) {
        int close = line.indexOf(']', open);
        int nested = line.indexOf('[', open + 1);
        if (close < 0 || (nested >= 0 && nested < close)) {
            return -1;
        }
        int end = close + 1;
        while (end < line.length() && !isRemark(line, end)) {
            char c = line.charAt(end);
            if (depth > 0 && (c == ',' || c == '}' || c == ']')) {
                break;
            }
            if (c == '[' || c == ']' || c == ':') {
                return -1;
            }
            end++;
        }
        String rest = line.substring(close + 1, end).strip();
        return rest.isEmpty() || rest.equals(",") ? -1 : end;
    }

    /** The text with such lists in quotes. */
    String text() {
        return out.toString();
    }

    /** Index of a mark in the text as written. */
    int index(Mark mark) {
        int at = offsets[mark.getIndex()];
        return at - addedBefore(at);
    }

    /** Column of a mark in the text as written, from 1. */
    int column(Mark mark) {
        int start = offsets[mark.getIndex() - mark.getColumn()];
        return mark.getColumn() + 1 - addedBefore(offsets[mark.getIndex()]) + addedBefore(start);
    }

    private int addedBefore(int at) {
        int found = Collections.binarySearch(added, at);
        return found >= 0 ? found : -found - 1;
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

    /** A part of the text as written. */
    String slice(int start, int end) {
        return source.substring(start, end);
    }
}
