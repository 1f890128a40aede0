package org.coldpleat.model.typical;

import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.table.CsvTable;

/**
 * What is usual of a part of a spin-on filter, for sheets that do not tell; see the table {@code typical-filters.csv}.
 *
 * @param quantity path below the candidate
 * @param kind of the quantity
 * @param value the quantity [SI], or where it scales with another one the multiple of that [1]
 * @param scales true if it scales with another one
 * @param band factor from the value to both ends of its 95 % band [1], above 1
 * @param sureness from a, several sources, to d, a guess
 * @param source where it comes from
 */
public record TypicalFilter(
        String quantity, Kind kind, double value, boolean scales, double band, String sureness, String source) {
    private static final Map<String, TypicalFilter> ALL =
            CsvTable.read(TypicalFilter.class, "typical-filters.csv", TypicalFilter::parse).stream()
                    .collect(Collectors.toUnmodifiableMap(TypicalFilter::quantity, Function.identity()));

    /** The row of a quantity. */
    public static TypicalFilter of(String quantity) {
        TypicalFilter row = ALL.get(quantity);
        if (row == null) {
            throw new IllegalArgumentException("nothing typical of " + quantity + " in " + ALL.keySet());
        }
        return row;
    }

    /** Paths of all rows. */
    public static Set<String> quantities() {
        return ALL.keySet();
    }

    /** The quantity with its band, log-normal and marked typical, where it scales with nothing. */
    public Measured measured() {
        if (scales) {
            throw new IllegalArgumentException(quantity + " is a multiple of another quantity, which was not given");
        }
        return banded(value);
    }

    /** The quantity with its band, log-normal and marked typical, so many times another one [SI]. */
    public Measured times(double other) {
        if (!scales) {
            throw new IllegalArgumentException(quantity + " is no multiple of another quantity");
        }
        return banded(value * other);
    }

    /** The quantity of which another one [SI] is the multiple, with the same band. */
    public Measured behind(double other) {
        if (!scales) {
            throw new IllegalArgumentException(quantity + " is no multiple of another quantity");
        }
        return banded(other / value);
    }

    /** The quantity with its band, but at most so much [SI]. */
    public Measured atMost(double limit) {
        return banded(Math.min(measured().value(), limit));
    }

    private Measured banded(double central) {
        return Measured.within(kind, central, band, Provenance.TYPICAL);
    }

    private static TypicalFilter parse(CsvTable.Row row) {
        Kind kind = Kind.valueOf(row.text("kind"));
        boolean scales = !row.text("of").isEmpty();
        double value = scales ? row.number("value") : read(row.text("value") + " " + row.text("unit"), kind);
        return new TypicalFilter(
                row.text("quantity"),
                kind,
                value,
                scales,
                row.number("band"),
                row.text("sureness"),
                row.text("source"));
    }

    private static double read(String text, Kind kind) {
        String plain = text.endsWith(" 1") ? text.substring(0, text.length() - 2) : text;
        return QuantityText.parse(plain, kind, Provenance.TYPICAL)
                .value()
                .orElseThrow(() -> new IllegalStateException("not a " + kind + ": " + plain))
                .value();
    }
}
