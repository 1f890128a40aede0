package org.coldpleat.shared.casefile.writing;

import org.coldpleat.shared.casefile.Tree.Items;

/** Where lines, remarks and entries stand in the text of a draft. */
record DraftLines(String text) {
    /** The line break the text uses. */
    String lineBreak() {
        int first = text.indexOf('\n');
        return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
    }

    int lineStart(int at) {
        int start = at;
        while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
            start--;
        }
        return start;
    }

    /** Index of the line break behind a place, or of the end of the text. */
    int lineEnd(int at) {
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    /** Index of the first character of the line behind the one a place is on. */
    int nextLine(int at) {
        int end = lineEnd(at);
        return end >= text.length() ? end : end + (text.startsWith("\r\n", end) ? 2 : 1);
    }

    /** Number of characters before a place on its line. */
    int column(int at) {
        return at - lineStart(at);
    }

    /** True if only blanks stand between two places. */
    boolean isGap(int from, int to) {
        return text.substring(from, to).isBlank();
    }

    /** True if the rest of the line of a place holds a remark. */
    boolean remarkBehind(int at) {
        return text.substring(at, lineEnd(at)).stripLeading().startsWith("#");
    }

    /** True if one of the lines that begin between two places is a remark. */
    boolean remarkBetween(int from, int to) {
        return text.substring(from, to)
                .lines()
                .anyMatch(line -> line.stripLeading().startsWith("#"));
    }

    /** Index of the colon behind a key. */
    int colon(int keyEnd) {
        return text.indexOf(':', keyEnd);
    }

    /** Index of the dash of a list entry. */
    int dash(Items list, int entry) {
        int low = entry == 0 ? list.start() : list.items().get(entry - 1).end();
        int start = lineStart(list.items().get(entry).start());
        while (true) {
            int first = start;
            while (first < text.length() && (text.charAt(first) == ' ' || text.charAt(first) == '\t')) {
                first++;
            }
            if (text.startsWith("-", first) || start <= low) {
                return text.startsWith("-", first) ? first : text.indexOf('-', low);
            }
            start = lineStart(start - 1);
        }
    }

    /** Blanks to indent a line with. */
    static String blanks(int count) {
        return " ".repeat(count);
    }

    /** The text with a part replaced. */
    String splice(int from, int to, String with) {
        return text.substring(0, from) + with + text.substring(to);
    }
}
