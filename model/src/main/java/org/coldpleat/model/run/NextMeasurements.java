package org.coldpleat.model.run;

import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.shared.table.CsvTable;

/** Which measurement would narrow an unknown; see the table {@code next-measurements.csv}. */
final class NextMeasurements {
    /** Key of the sentence for an unknown that the table does not list. */
    static final String OTHER = "next.other";

    private static final Map<String, String> CODES = column("code");
    private static final Map<String, String> MEASUREMENTS = column("measurement");

    private NextMeasurements() {}

    private static Map<String, String> column(String name) {
        return CsvTable.read(NextMeasurements.class, "next-measurements.csv", row -> row).stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("field"), row -> row.text(name)));
    }

    /** Key of the words for the measurement that would narrow the unknown of a path. */
    static String measurementFor(String path) {
        return FieldPath.find(MEASUREMENTS, path).orElse("measure.other");
    }

    /** Key of the sentence that suggests a measurement for the unknown of a path. */
    static String codeFor(String path) {
        return FieldPath.find(CODES, path).orElse(OTHER);
    }
}
