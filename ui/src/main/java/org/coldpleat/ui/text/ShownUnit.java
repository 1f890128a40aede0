package org.coldpleat.ui.text;

import org.coldpleat.shared.quantity.Unit;

/**
 * A unit to show a value in: {@code shown = factor * SI + offset}.
 *
 * @param symbol symbol as shown
 * @param factor units per SI unit
 * @param offset reading at 0 SI [unit]
 */
public record ShownUnit(String symbol, double factor, double offset) {
    /** A unit of the shared table, as it is printed. */
    public static ShownUnit of(Unit known) {
        return new ShownUnit(known.printed(), 1 / known.factor(), -known.offset() / known.factor());
    }

    /** A plain scale without offset. */
    public static ShownUnit scaled(String symbol, double factor) {
        return new ShownUnit(symbol, factor, 0);
    }

    public double of(double si) {
        return factor * si + offset;
    }

    /** A spread or difference, which knows no offset. */
    public double ofDifference(double si) {
        return factor * si;
    }
}
