package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table for a terminal: columns as wide as their content, long words of a cell wrapped at spaces. */
public final class Table {
    private static final String GAP = "  ";

    private final int[] widest;
    private final boolean[] right;
    private final List<String[]> rows = new ArrayList<>();
    private int headRows;

    /**
     * A table without rows.
     *
     * @param widest greatest width of each column [characters]
     * @param right true for a column of numbers, which is set flush right
     */
    public Table(int[] widest, boolean[] right) {
        this.widest = widest.clone();
        this.right = right.clone();
    }

    public Table head(String... cells) {
        rows.add(cells);
        headRows++;
        return this;
    }

    public Table row(String... cells) {
        rows.add(cells);
        return this;
    }

    /** The lines of the table, indented by two spaces, with a rule below the head. */
    public List<String> lines() {
        List<List<List<String>>> wrapped = new ArrayList<>();
        int[] width = new int[widest.length];
        for (String[] row : rows) {
            List<List<String>> cells = new ArrayList<>();
            for (int c = 0; c < widest.length; c++) {
                List<String> cell = wrap(c < row.length ? row[c] : "", widest[c]);
                for (String line : cell) {
                    width[c] = Math.max(width[c], length(line));
                }
                cells.add(cell);
            }
            wrapped.add(cells);
        }
        List<String> lines = new ArrayList<>();
        for (int r = 0; r < wrapped.size(); r++) {
            if (r == headRows && headRows > 0) {
                lines.add(rule(width));
            }
            int high = wrapped.get(r).stream().mapToInt(List::size).max().orElse(1);
            for (int l = 0; l < high; l++) {
                lines.add(line(wrapped.get(r), l, width));
            }
        }
        return lines;
    }

    private String line(List<List<String>> cells, int l, int[] width) {
        StringBuilder text = new StringBuilder();
        for (int c = 0; c < width.length; c++) {
            String cell = l < cells.get(c).size() ? cells.get(c).get(l) : "";
            String pad = " ".repeat(width[c] - length(cell));
            text.append(GAP).append(right[c] ? pad + cell : cell + pad);
        }
        return text.toString().stripTrailing();
    }

    private static String rule(int[] width) {
        StringBuilder text = new StringBuilder();
        for (int w : width) {
            text.append(GAP).append("-".repeat(w));
        }
        return text.toString();
    }

    /** Breaks a text at spaces into lines no longer than {@code width}; a longer word stays whole. */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Arrays.asList(text.strip().split(" +"))) {
            if (line.length() > 0 && length(line.toString()) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
