package org.coldpleat.model.oil;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads the small tables that lie beside this class: comment lines, one header line, rows; text may stand in quotes. */
final class CsvTable {
    private CsvTable() {}

    /** One row, by column name. */
    record Row(Map<String, String> cells) {
        String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
            }
            return cell;
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    /** All rows of a table, each turned into a value. */
    static <T> List<T> read(String resource, Function<Row, T> reader) {
        try (InputStream stream = CsvTable.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("missing table " + resource);
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            List<String> rows = lines.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
            List<String> header = cells(rows.get(0));
            return rows.stream()
                    .skip(1)
                    .map(line -> reader.apply(row(header, cells(line))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(List<String> header, List<String> cells) {
        Map<String, String> byName = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            byName.put(header.get(i), cells.get(i));
        }
        return new Row(Map.copyOf(byName));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char character = line.charAt(i);
            if (character == '"') {
                quoted = !quoted;
            } else if (character == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(character);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
