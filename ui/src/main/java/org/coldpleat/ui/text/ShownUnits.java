package org.coldpleat.ui.text;

import java.util.function.Function;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.quantity.Units;

/**
 * The units in which text and tables for spreadsheets are written. JSON is always in coherent SI.
 *
 * @param system family of the units
 */
public record ShownUnits(UnitSystem system) {
    public static ShownUnits of(UnitSystem system) {
        return new ShownUnits(system);
    }

    /** What stands in brackets behind a value in units of the metric trade: the US unit. Nothing in the others. */
    public String beside(Function<ShownUnits, ShownUnit> unit, Function<ShownUnit, String> words) {
        return system == UnitSystem.METRIC ? Texts.get("units.beside", words.apply(unit.apply(of(UnitSystem.US)))) : "";
    }

    /** Of media. */
    public ShownUnit area() {
        return of(Kind.AREA);
    }

    /** Of drops and gauge pressures. */
    public ShownUnit pressure() {
        return of(Kind.PRESSURE_DIFFERENCE);
    }

    /** Of oil. */
    public ShownUnit temperature() {
        return of(Kind.TEMPERATURE);
    }

    /** Of spreads of temperatures. */
    public ShownUnit temperatureDifference() {
        return of(Kind.TEMPERATURE_DIFFERENCE);
    }

    /** Of oil. */
    public ShownUnit flow() {
        return of(Kind.FLOW_RATE);
    }

    /** Of shafts. */
    public ShownUnit rotation() {
        return of(Kind.ROTATION);
    }

    /** Of oil; liters in SI too, since a column in cubic meters would hold zeros only. */
    public ShownUnit volume() {
        return system == UnitSystem.SI ? ShownUnit.of(Units.require(Kind.VOLUME, "L")) : of(Kind.VOLUME);
    }

    /** Of a kind, whatever the size of the value. */
    public ShownUnit of(Kind kind) {
        return ShownUnit.of(system.unit(kind));
    }
}
