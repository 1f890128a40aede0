package org.coldpleat.shared.casefile;

import java.util.List;

/**
 * What stands in a file, with places but without meaning. Lines and columns count from 1, {@code start} and {@code end}
 * are indices in the text as written.
 */
sealed interface Tree {
    int line();

    int column();

    int start();

    int end();

    /** One value. {@code plain} is false if it was quoted or a text block. */
    record Scalar(String text, boolean plain, int line, int column, int start, int end) implements Tree {
        /** True for a value left blank: unknown, never zero. */
        boolean isBlank() {
            return plain && (text.isBlank() || text.equals("~") || text.equals("null"));
        }
    }

    /** A list; {@code raw} is the text of a list in brackets as it stands in the file, empty for other lists. */
    record Items(List<Tree> items, String raw, int line, int column, int start, int end) implements Tree {}

    /** A value that was given in a broken way that is already noted. */
    record Spoiled(int line, int column, int start, int end) implements Tree {}

    /** Keys with values; {@code inline} is true inside braces. */
    record Keys(List<Pair> pairs, boolean inline, int line, int column, int start, int end) implements Tree {}

    /** One key with its value. */
    record Pair(Scalar key, Tree value) {}
}
