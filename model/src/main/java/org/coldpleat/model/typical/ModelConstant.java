package org.coldpleat.model.typical;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.table.CsvTable;

/**
 * A constant of the model that nobody measures on a bench; see the table {@code model-constants.csv}.
 *
 * @param name name in the table
 * @param own true if it differs from candidate to candidate
 * @param value value with its spread
 * @param upwardOnly true if the true value can only lie above
 */
public record ModelConstant(String name, boolean own, Measured value, boolean upwardOnly) {
    private static final Map<String, ModelConstant> ALL =
            read().stream().collect(Collectors.toUnmodifiableMap(ModelConstant::name, Function.identity()));

    /** The constant of a name. */
    public static ModelConstant of(String name) {
        ModelConstant constant = ALL.get(name);
        if (constant == null) {
            throw new IllegalArgumentException("no model constant " + name + " in " + ALL.keySet());
        }
        return constant;
    }

    private static List<ModelConstant> read() {
        return CsvTable.read(ModelConstant.class, "model-constants.csv", ModelConstant::parse);
    }

    private static ModelConstant parse(CsvTable.Row row) {
        boolean factor = row.text("spread").equals("factor");
        return new ModelConstant(
                row.text("name"),
                row.text("scope").equals("own"),
                Measured.exact(Kind.valueOf(row.text("kind")), row.number("value"), Provenance.GUESSED)
                        .withSpread(row.number("uncertainty"), factor ? Spread.LOG_NORMAL : Spread.NORMAL),
                row.text("spread").equals("upward"));
    }
}
