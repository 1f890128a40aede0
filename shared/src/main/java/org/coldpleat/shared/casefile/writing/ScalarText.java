package org.coldpleat.shared.casefile.writing;

import java.util.List;

/** The ways a value can be written in YAML, the plainest first. */
final class ScalarText {
    private ScalarText() {}

    /** All ways to write a text; which of them reads back as the text depends on the place. */
    static List<String> ways(String text) {
        if (text.isEmpty()) {
            return List.of("");
        }
        boolean oneLine = text.chars().noneMatch(c -> Character.isISOControl(c) || c == '\u2028' || c == '\u2029');
        String twice = doubled(text);
        return oneLine ? List.of(text, "'" + text.replace("'", "''") + "'", twice) : List.of(twice);
    }

    private static String doubled(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    boolean hidden = Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c >= '\ufffe';
                    out.append(hidden || c == '\ufeff' ? String.format("\\u%04x", (int) c) : String.valueOf(c));
                }
            }
        }
        return out.append('"').toString();
    }

    /** What can be kept of a typed text: no blanks around it, no halves of characters. */
    static String tidy(String typed) {
        StringBuilder out = new StringBuilder();
        typed.codePoints()
                .map(point -> point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE ? 0xfffd : point)
                .forEach(out::appendCodePoint);
        return out.toString().strip();
    }
}
