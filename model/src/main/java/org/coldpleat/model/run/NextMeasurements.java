package org.coldpleat.model.run;

import java.util.List;
import org.coldpleat.shared.table.CsvTable;

/** Which measurement would narrow an unknown; see the table {@code next-measurements.csv}. */
final class NextMeasurements {
    /** Key of the sentence for an unknown that the table does not list. */
    static final String OTHER = "next.other";

    private static final List<Row> ROWS = CsvTable.read(
            NextMeasurements.class, "next-measurements.csv", row -> new Row(row.text("field"), row.text("code")));

    private NextMeasurements() {}

    private record Row(String field, String code) {}

    /** Key of the sentence that suggests a measurement for the unknown of a path. */
    static String codeFor(String path) {
        return ROWS.stream()
                .filter(row -> FieldPath.endsWith(path, row.field()))
                .map(Row::code)
                .findFirst()
                .orElse(OTHER);
    }
}
