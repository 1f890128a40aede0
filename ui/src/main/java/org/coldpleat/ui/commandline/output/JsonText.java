package org.coldpleat.ui.commandline.output;

import java.util.Locale;

/**
 * Writes JSON (RFC 8259) in the order of the calls, two spaces a level. A number that is not finite becomes null, since
 * JSON knows no other way to say that there is none.
 */
public final class JsonText {
    private final StringBuilder text = new StringBuilder();
    private int level;
    private boolean first = true;

    public JsonText object(String name) {
        return open(name, '{');
    }

    public JsonText array(String name) {
        return open(name, '[');
    }

    public JsonText element() {
        return open("", '{');
    }

    public JsonText endObject() {
        return close('}');
    }

    public JsonText endArray() {
        return close(']');
    }

    public JsonText text(String name, String value) {
        start(name);
        quote(value);
        return this;
    }

    public JsonText number(String name, double value) {
        start(name);
        text.append(Double.isFinite(value) ? Double.toString(value) : "null");
        return this;
    }

    public JsonText whole(String name, long value) {
        start(name);
        text.append(value);
        return this;
    }

    public JsonText flag(String name, boolean value) {
        start(name);
        text.append(value);
        return this;
    }

    public JsonText nothing(String name) {
        start(name);
        text.append("null");
        return this;
    }

    /** An array of numbers on one line; an empty name for an array within an array. */
    public JsonText numbers(String name, double... values) {
        start(name);
        text.append('[');
        for (int i = 0; i < values.length; i++) {
            text.append(i > 0 ? ", " : "").append(Double.isFinite(values[i]) ? Double.toString(values[i]) : "null");
        }
        text.append(']');
        return this;
    }

    /** The text, ended by a line feed. */
    public String finished() {
        return text + "\n";
    }

    private JsonText open(String name, char bracket) {
        start(name);
        text.append(bracket);
        level++;
        first = true;
        return this;
    }

    private JsonText close(char bracket) {
        level--;
        if (!first) {
            newLine();
        }
        text.append(bracket);
        first = false;
        return this;
    }

    private void start(String name) {
        if (!first) {
            text.append(',');
        }
        if (level > 0) {
            newLine();
        }
        first = false;
        if (!name.isEmpty()) {
            quote(name);
            text.append(": ");
        }
    }

    private void newLine() {
        text.append('\n').append("  ".repeat(level));
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\t' -> text.append("\\t");
                default -> {
                    if (c < ' ' || (Character.isSurrogate(c) && !isPaired(value, i))) {
                        text.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
                    } else {
                        text.append(c);
                    }
                }
            }
        }
        text.append('"');
    }

    private static boolean isPaired(String value, int i) {
        char c = value.charAt(i);
        return Character.isHighSurrogate(c)
                ? i + 1 < value.length() && Character.isLowSurrogate(value.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(value.charAt(i - 1));
    }
}
