package org.coldpleat.model.run;

import java.util.List;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.table.CsvTable;

/** Spreads taken for values that were entered without one; see the table {@code default-spreads.csv}. */
final class DefaultSpreads {
    private static final List<Row> ROWS = CsvTable.read(
            DefaultSpreads.class,
            "default-spreads.csv",
            row -> new Row(row.text("field"), row.text("form"), row.number("halfWidth")));

    private DefaultSpreads() {}

    private record Row(String field, String form, double halfWidth) {}

    /** The value, with the default spread of its field if it has none of its own. */
    static Measured complete(String path, Measured measured) {
        if (measured.spread() != Spread.NONE) {
            return measured;
        }
        for (Row row : ROWS) {
            if (FieldPath.endsWith(path, row.field())) {
                return switch (row.form()) {
                    case "absolute" -> measured.withSpread(row.halfWidth(), Spread.RECTANGULAR);
                    case "relative" ->
                        measured.withSpread(row.halfWidth() * Math.abs(measured.value()), Spread.RECTANGULAR);
                    case "factor" -> measured.withSpread(row.halfWidth(), Spread.LOG_NORMAL);
                    default -> throw new IllegalStateException("unknown form " + row.form() + " of " + row.field());
                };
            }
        }
        return measured;
    }
}
