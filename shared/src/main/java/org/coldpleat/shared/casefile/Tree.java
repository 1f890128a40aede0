package org.coldpleat.shared.casefile;

import java.util.List;

/**
 * What stands in a file, with places but without meaning. Lines and columns count from 1, {@code start} and {@code end}
 * are indices in the text as written.
 */
public sealed interface Tree {
    int line();

    int column();

    int start();

    int end();

    /** True if another tree reads the same and stands at the same lines and columns; its indices may differ. */
    default boolean readsAs(Tree other) {
        if (line() != other.line() || column() != other.column()) {
            return false;
        }
        if (this instanceof Scalar one && other instanceof Scalar two) {
            return one.plain() == two.plain() && one.text().equals(two.text());
        }
        if (this instanceof Items one && other instanceof Items two) {
            return one.raw().equals(two.raw()) && allRead(one.items(), two.items());
        }
        return this instanceof Keys one
                && other instanceof Keys two
                && one.inline() == two.inline()
                && allRead(one.keys(), two.keys())
                && allRead(one.values(), two.values());
    }

    /** A value as typed; a list in one piece; empty for keys. */
    default String whole() {
        return this instanceof Scalar scalar ? scalar.text() : "";
    }

    private static boolean allRead(List<? extends Tree> some, List<? extends Tree> others) {
        boolean same = some.size() == others.size();
        for (int i = 0; same && i < some.size(); i++) {
            same = some.get(i).readsAs(others.get(i));
        }
        return same;
    }

    /** One value. {@code plain} is false if it was quoted or a text block. */
    record Scalar(String text, boolean plain, int line, int column, int start, int end) implements Tree {
        /** True for a value left blank: unknown, never zero. */
        public boolean isBlank() {
            return plain && (text.isBlank() || text.equals("~") || text.equals("null"));
        }
    }

    /** A list; {@code raw} is the text of a list in brackets as it stands in the file, empty for other lists. */
    record Items(List<Tree> items, String raw, int line, int column, int start, int end) implements Tree {
        @Override
        public String whole() {
            boolean plain = items.stream().allMatch(item -> item instanceof Scalar s && s.plain());
            return plain && !raw.isEmpty() ? raw : inBrackets();
        }

        private String inBrackets() {
            StringBuilder list = new StringBuilder("[");
            for (Tree item : items) {
                list.append(list.length() > 1 ? "; " : "").append(item instanceof Scalar s ? s.text() : "?");
            }
            return list.append("]").toString();
        }
    }

    /** A value that was given in a broken way that is already noted. */
    record Spoiled(int line, int column, int start, int end) implements Tree {}

    /** Keys with values; {@code inline} is true inside braces. */
    record Keys(List<Pair> pairs, boolean inline, int line, int column, int start, int end) implements Tree {
        List<Scalar> keys() {
            return pairs.stream().map(Pair::key).toList();
        }

        List<Tree> values() {
            return pairs.stream().map(Pair::value).toList();
        }
    }

    /** One key with its value. */
    record Pair(Scalar key, Tree value) {
        /** True for the piece of a number behind a decimal comma in braces. */
        public boolean isTail() {
            boolean digit =
                    !key().text().isEmpty() && Character.isDigit(key().text().charAt(0));
            return digit && key().plain() && value() instanceof Scalar value && value.isBlank();
        }
    }
}
