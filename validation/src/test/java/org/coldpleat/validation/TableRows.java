package org.coldpleat.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a table beside a test: comment lines start with #, the first other line names the columns. */
public final class TableRows {
    private TableRows() {}

    /** Rows of a resource beside a class, cells by column name. */
    public static List<Map<String, String>> read(Class<?> beside, String name) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(beside.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            String[] columns = null;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.startsWith("#") || line.isBlank()) {
                    continue;
                }
                String[] cells = line.split(",", -1);
                if (columns == null) {
                    columns = cells;
                    continue;
                }
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < columns.length; i++) {
                    row.put(columns[i], cells[i]);
                }
                rows.add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
