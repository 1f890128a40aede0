package org.coldpleat.shared.quantity;

import java.util.List;
import java.util.Objects;

/**
 * A unit of the trade: a value in SI is {@code value * factor + offset}.
 *
 * @param symbol how the unit is printed, such as {@code mm2/s}
 * @param factor size of the unit [SI unit of the kind], above 0
 * @param offset SI value of the zero of the scale [SI unit of the kind]; 0 except for temperatures
 * @param aliases other ways people write it; signs and spaces count as in {@link Units}
 */
public record Unit(String symbol, double factor, double offset, List<String> aliases) {
    public Unit {
        Objects.requireNonNull(symbol, "symbol");
        if (!(factor > 0) || Double.isInfinite(factor) || !Double.isFinite(offset)) {
            throw new IllegalArgumentException("factor of " + symbol + " must be finite and above 0, was " + factor);
        }
        aliases = List.copyOf(aliases);
    }

    /** The symbol with raised digits, as print has it; blank for a plain number. */
    public String printed() {
        return symbol.equals("1")
                ? ""
                : symbol.replaceFirst("^um", "µm")
                        .replaceAll("(?<=[A-Za-z])2(?![0-9A-Za-z])", "²")
                        .replaceAll("(?<=[A-Za-z])3(?![0-9A-Za-z])", "³");
    }

    /** The SI value of a number written in this unit. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** The number in this unit that stands for an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** The SI size of a difference written in this unit: the offset of a scale plays no part. */
    public double differenceToSi(double difference) {
        return difference * factor;
    }

    /** The number in this unit that stands for an SI difference. */
    public double differenceFromSi(double si) {
        return si / factor;
    }
}
