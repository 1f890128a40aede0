package org.coldpleat.model.certainty;

import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.typical.FieldPath;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.table.CsvTable;

/** Which measurement would narrow an unknown; see the table {@code next-measurements.csv}. */
public final class NextMeasurements {
    /** Key of the sentence for an unknown that the table does not list. */
    public static final String OTHER = "next.other";

    private static final Map<String, String> CODES = column("code");
    private static final Map<String, String> MEASUREMENTS = column("measurement");

    private static final Map<String, Reach> REACHES =
            CsvTable.read(NextMeasurements.class, "next-measurements.csv", row -> row).stream()
                    .collect(Collectors.toUnmodifiableMap(
                            row -> row.text("field"), row -> new Reach(row.text("form"), row.number("reaches"))));

    private NextMeasurements() {}

    /** What a measurement reaches: standard uncertainty [SI of the value], or over the value [1] if relative. */
    private record Reach(String form, double uncertainty) {
        double remaining(Measured now) {
            boolean logarithmic = now.spread() == Spread.LOG_NORMAL;
            double relative = logarithmic ? now.halfWidth() : now.standardUncertainty() / Math.abs(now.value());
            double present = form.equals("relative") || logarithmic ? relative : now.standardUncertainty();
            double after = logarithmic && form.equals("absolute") ? uncertainty / now.value() : uncertainty;
            return Math.min(1, after / present);
        }
    }

    /**
     * Uncertainty that the measurement for an unknown leaves over the one now [1], at most 1; 1 where the table knows of
     * none.
     */
    static double remaining(Unknown unknown) {
        return FieldPath.find(REACHES, unknown.path())
                .map(reach -> reach.remaining(unknown.value()))
                .orElse(1.0);
    }

    private static Map<String, String> column(String name) {
        return CsvTable.read(NextMeasurements.class, "next-measurements.csv", row -> row).stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("field"), row -> row.text(name)));
    }

    /** Key of the words for the measurement that would narrow the unknown of a path. */
    static String measurementFor(String path) {
        return FieldPath.find(MEASUREMENTS, path).orElse("measure.other");
    }

    /** Key of the sentence that suggests a measurement for the unknown of a path. */
    public static String codeFor(String path) {
        return FieldPath.find(CODES, path).orElse(OTHER);
    }
}
