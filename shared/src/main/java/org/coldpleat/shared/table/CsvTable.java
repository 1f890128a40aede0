package org.coldpleat.shared.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Reads a small table that lies beside a class: comment lines beginning with {@code #}, one header line, rows. Text with
 * commas stands in quotes.
 */
public final class CsvTable {
    private static final Pattern COMMENT = Pattern.compile("(?m)^#.*\\R?");

    private CsvTable() {}

    /**
     * One row.
     *
     * @param cells cell text by column name
     */
    public record Row(Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        /** Text of a column. */
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
            }
            return cell;
        }

        /** Number of a column. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    /**
     * All rows of a table, each turned into a value.
     *
     * @param beside class beside which the table lies
     * @param resource file name
     * @param reader turns a row into a value
     */
    public static <T> List<T> read(Class<?> beside, String resource, Function<Row, T> reader) {
        try (InputStream stream = beside.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("missing table " + resource + " beside " + beside.getName());
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> rows = CsvReader.read(COMMENT.matcher(text).replaceAll("")).lines().stream()
                    .map(line -> line.cells().stream().map(String::strip).toList())
                    .toList();
            return rows.stream()
                    .skip(1)
                    .map(cells -> reader.apply(row(rows.get(0), cells)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A table of numbers by columns.
     *
     * @param beside class beside which the table lies
     * @param resource file name
     * @param columns names of the wanted columns
     * @return double[columns][rows]
     */
    public static double[][] columns(Class<?> beside, String resource, String... columns) {
        List<Row> rows = read(beside, resource, row -> row);
        double[][] numbers = new double[columns.length][rows.size()];
        for (int c = 0; c < columns.length; c++) {
            for (int r = 0; r < rows.size(); r++) {
                numbers[c][r] = rows.get(r).number(columns[c]);
            }
        }
        return numbers;
    }

    private static Row row(List<String> header, List<String> cells) {
        if (cells.size() != header.size()) {
            throw new IllegalStateException("row " + cells + " has other columns than " + header);
        }
        Map<String, String> byName = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            byName.put(header.get(i), cells.get(i));
        }
        return new Row(byName);
    }
}
