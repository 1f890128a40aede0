package org.coldpleat.ui.desktop.viewmodel;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Present;

/**
 * What the lines of a sheet are understood as, and what they amount to, in the units that are preferred.
 *
 * @param understood every quantity of the case by its path; none while the case is not understood
 * @param amounts what a section amounts to in words, by the path of the section
 * @param units that are preferred
 */
public record SheetMeaning(Map<String, Measured> understood, Map<String, Derived> amounts, UnitSystem units) {
    /** Nothing is understood. */
    public static final SheetMeaning NONE = new SheetMeaning(Map.of(), Map.of(), UnitSystem.METRIC);

    /**
     * What a section amounts to.
     *
     * @param key of the words that say what it is
     * @param value its value with its unit
     */
    public record Derived(String key, String value) {}

    public SheetMeaning {
        understood = Map.copyOf(understood);
        amounts = Map.copyOf(amounts);
    }

    /**
     * A value with its band and unit as it is understood, a choice in plain words; empty if it is not understood or stands
     * there in these words.
     */
    public Optional<String> of(SheetRow row) {
        if (row.field().choices().contains(row.typed())) {
            return Optional.of(FieldCatalog.choice(row.typed())).filter(words -> !words.equalsIgnoreCase(row.typed()));
        }
        return Optional.ofNullable(understood.get(row.path()))
                .map(value -> QuantityFormat.format(value, units))
                .filter(text -> !text.equals(row.typed().strip()));
    }

    /** What a section amounts to; empty if nothing can be said of it. */
    public Optional<Derived> amount(SheetRow row) {
        return row.type() == SheetRow.Type.SECTION ? Optional.ofNullable(amounts.get(row.path())) : Optional.empty();
    }

    /** What the sheet of a candidate amounts to, by the sections it comes from. */
    static Map<String, Derived> amounts(String path, Present present, UnitSystem units) {
        Map<String, Derived> amounts = new LinkedHashMap<>();
        amounts.put(
                path + ".pleats",
                new Derived("amount.area", QuantityFormat.format(present.grossArea(), Kind.AREA, units)));
        amounts.put(
                path + ".medium",
                new Derived(
                        "amount.resistance",
                        QuantityFormat.format(present.mediumResistance(), Kind.MEDIUM_RESISTANCE, units)));
        present.openingPressure()
                .ifPresent(pressure -> amounts.put(
                        path + ".bypass",
                        new Derived(
                                "amount.opening", QuantityFormat.format(pressure, Kind.PRESSURE_DIFFERENCE, units))));
        return amounts;
    }
}
