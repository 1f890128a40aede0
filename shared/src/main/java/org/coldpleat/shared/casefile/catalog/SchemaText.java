package org.coldpleat.shared.casefile.catalog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value of the catalog, which is JSON: an object, a list, or a word, which numbers and {@code true} are as well.
 *
 * <p>The catalog is read at each start of the program, and a reader of YAML takes ten times as long for it.
 *
 * @param word text, number or truth value as written; empty for others
 * @param keys of an object in the order of the text; empty for others
 * @param items of a list; empty for others
 */
record SchemaText(String word, Map<String, SchemaText> keys, List<SchemaText> items) {
    /** Reads a text without escapes in strings; what is no JSON throws. */
    static SchemaText read(String text) {
        if (text.indexOf('\\') >= 0) {
            throw new IllegalArgumentException("the catalog must have no escapes in its strings");
        }
        Reader reader = new Reader(text);
        SchemaText value = reader.value();
        if (!text.substring(reader.at).isBlank()) {
            throw reader.broken();
        }
        return value;
    }

    /** The word of a key; empty if the key is not there. */
    String word(String key) {
        SchemaText value = keys.get(key);
        return value == null ? "" : value.word;
    }

    private static final class Reader {
        private final String text;
        private int at;

        Reader(String text) {
            this.text = text;
        }

        SchemaText value() {
            return switch (next()) {
                case '{' -> object();
                case '[' -> list();
                case '"' -> new SchemaText(string(), Map.of(), List.of());
                default -> new SchemaText(bare(), Map.of(), List.of());
            };
        }

        private SchemaText object() {
            Map<String, SchemaText> keys = new LinkedHashMap<>();
            at++;
            while (next() != '}') {
                String key = string();
                if (next() != ':') {
                    throw broken();
                }
                at++;
                keys.put(key, value());
                behindEntry('}');
            }
            at++;
            return new SchemaText("", Collections.unmodifiableMap(keys), List.of());
        }

        private SchemaText list() {
            List<SchemaText> items = new ArrayList<>();
            at++;
            while (next() != ']') {
                items.add(value());
                behindEntry(']');
            }
            at++;
            return new SchemaText("", Map.of(), Collections.unmodifiableList(items));
        }

        private void behindEntry(char close) {
            char behind = next();
            if (behind == ',') {
                at++;
            } else if (behind != close) {
                throw broken();
            }
        }

        private String string() {
            int close = text.indexOf('"', at + 1);
            if (text.charAt(at) != '"' || close < 0) {
                throw broken();
            }
            String inside = text.substring(at + 1, close);
            at = close + 1;
            return inside;
        }

        private String bare() {
            int start = at;
            while (at < text.length()
                    && (Character.isLetterOrDigit(text.charAt(at)) || "+-.".indexOf(text.charAt(at)) >= 0)) {
                at++;
            }
            if (at == start) {
                throw broken();
            }
            return text.substring(start, at);
        }

        /** The next character that is no blank, which stays to be read. */
        private char next() {
            while (at < text.length() && text.charAt(at) <= ' ') {
                at++;
            }
            if (at == text.length()) {
                throw broken();
            }
            return text.charAt(at);
        }

        IllegalArgumentException broken() {
            String rest = text.substring(at, Math.min(text.length(), at + 40));
            return new IllegalArgumentException("the catalog is broken at character " + at + ": " + rest);
        }
    }
}
