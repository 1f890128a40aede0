package org.coldpleat.model.typical;

import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.table.CsvTable;

/** Spreads taken for values that were entered without one; see the table {@code default-spreads.csv}. */
public final class DefaultSpreads {
    private static final Map<String, Row> ROWS =
            CsvTable.read(DefaultSpreads.class, "default-spreads.csv", row -> row).stream()
                    .collect(Collectors.toUnmodifiableMap(
                            row -> row.text("field"), row -> new Row(row.text("form"), row.number("halfWidth"))));

    private DefaultSpreads() {}

    private record Row(String form, double halfWidth) {
        Measured applied(Measured measured) {
            return switch (form) {
                case "absolute" -> measured.withSpread(halfWidth, Spread.RECTANGULAR);
                case "relative" -> measured.withSpread(halfWidth * Math.abs(measured.value()), Spread.RECTANGULAR);
                case "factor" -> measured.withSpread(halfWidth, Spread.LOG_NORMAL);
                default -> throw new IllegalStateException("unknown form " + form);
            };
        }
    }

    /** The value, with the default spread of its field if it has none of its own. */
    public static Measured complete(String path, Measured measured) {
        return measured.spread() != Spread.NONE
                ? measured
                : FieldPath.find(ROWS, path).map(row -> row.applied(measured)).orElse(measured);
    }
}
