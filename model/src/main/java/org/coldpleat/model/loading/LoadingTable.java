package org.coldpleat.model.loading;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads a table of this package off the class path: lines starting with # are the header, then one line of names. */
final class LoadingTable {
    private LoadingTable() {}

    /** Columns of the table, double[columns][rows]. */
    static double[][] columns(String resource) {
        List<String> lines = lines(resource);
        int count = lines.get(0).split(",", -1).length;
        double[][] columns = new double[count][lines.size() - 1];
        for (int row = 1; row < lines.size(); row++) {
            String[] cells = lines.get(row).split(",", -1);
            for (int column = 0; column < count; column++) {
                columns[column][row - 1] = Double.parseDouble(cells[column]);
            }
        }
        return columns;
    }

    private static List<String> lines(String resource) {
        try (InputStream stream = LoadingTable.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("table missing on the class path: " + resource);
            }
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                return reader.lines()
                        .filter(line -> !line.startsWith("#") && !line.isBlank())
                        .toList();
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
