package org.coldpleat.model.typical;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.Units;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.table.CsvTable;

/**
 * What stands in for an engine of which only kind and size are known; see the table {@code typical-engines.csv}.
 *
 * @param kind kind with its fuel, as the table has it
 * @param liters displacement of the engine [L], above 0
 */
public record TypicalEngine(String kind, double liters) {
    private static final String ANY = "any";

    private static final Map<String, Row> ROWS =
            CsvTable.read(TypicalEngine.class, "typical-engines.csv", Row::of).stream()
                    .collect(Collectors.toUnmodifiableMap(row -> row.quantity() + " " + row.kind(), row -> row));

    /**
     * A row of the table.
     *
     * @param quantity name
     * @param kind of engine with its fuel, or any
     * @param value for an engine of one liter, in the unit
     * @param unit trade unit
     * @param power of the displacement in liters that the value goes with [1]
     * @param band factor, low-high, or empty
     * @param sureness a to d
     * @param source where the value comes from
     */
    public record Row(
            String quantity,
            String kind,
            double value,
            String unit,
            double power,
            String band,
            String sureness,
            String source) {
        static Row of(CsvTable.Row row) {
            return new Row(
                    row.text("quantity"),
                    row.text("kind"),
                    row.number("value"),
                    row.text("unit"),
                    row.number("power"),
                    row.text("band"),
                    row.text("sureness"),
                    row.text("source"));
        }
    }

    public TypicalEngine {
        Require.positive("liters", liters, "L");
        if (!kinds().contains(kind)) {
            throw new IllegalArgumentException("no typical engine " + kind + " in " + kinds());
        }
    }

    /** All kinds of the table, each with its fuel. */
    public static List<String> kinds() {
        return ROWS.values().stream()
                .map(Row::kind)
                .filter(kind -> !kind.equals(ANY))
                .distinct()
                .sorted()
                .toList();
    }

    /** Whether engines of this kind have a quantity. */
    public boolean knows(String quantity) {
        return find(quantity).isPresent();
    }

    private Optional<Row> find(String quantity) {
        return Optional.ofNullable(ROWS.get(quantity + " " + kind))
                .or(() -> Optional.ofNullable(ROWS.get(quantity + " " + ANY)));
    }

    /** The row behind a quantity. */
    public Row row(String quantity) {
        return find(quantity).orElseThrow(() -> new IllegalArgumentException("no typical " + quantity + " of " + kind));
    }

    /** The value of a quantity for this engine, with its band. */
    public Measured of(String quantity, Kind kindOfQuantity) {
        return of(quantity, kindOfQuantity, 1);
    }

    /**
     * The value of a quantity for this engine times a factor, with its band.
     *
     * @param factor [1], above 0
     */
    public Measured of(String quantity, Kind kindOfQuantity, double factor) {
        Row row = row(quantity);
        double scale = factor * Math.pow(liters, row.power());
        Unit unit = Units.require(kindOfQuantity, row.unit());
        double value = scale * unit.toSi(row.value());
        int dash = row.band().indexOf('-');
        if (row.band().isEmpty()) {
            return Measured.exact(kindOfQuantity, value, Provenance.TYPICAL);
        }
        return dash > 0
                ? Measured.between(
                        kindOfQuantity,
                        scale * unit.toSi(Double.parseDouble(row.band().substring(0, dash))),
                        scale * unit.toSi(Double.parseDouble(row.band().substring(dash + 1))),
                        Provenance.TYPICAL)
                : Measured.within(kindOfQuantity, value, Double.parseDouble(row.band()), Provenance.TYPICAL);
    }
}
