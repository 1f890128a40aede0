package org.coldpleat.ui.text;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;

/**
 * The units in which text and tables for spreadsheets are written. JSON is always in coherent SI.
 *
 * @param area of media
 * @param pressure of drops and gauge pressures
 * @param temperature of oil
 * @param temperatureDifference of spreads of temperatures
 * @param flow of oil
 * @param rotation of shafts
 */
public record ShownUnits(
        ShownUnit area,
        ShownUnit pressure,
        ShownUnit temperature,
        ShownUnit temperatureDifference,
        ShownUnit flow,
        ShownUnit rotation) {
    public static ShownUnits of(UnitSystem system) {
        return switch (system) {
            case SI ->
                new ShownUnits(
                        ShownUnit.of(Kind.AREA, "m2", "m²"),
                        ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "Pa", "Pa"),
                        ShownUnit.of(Kind.TEMPERATURE, "K", "K"),
                        ShownUnit.of(Kind.TEMPERATURE_DIFFERENCE, "K", "K"),
                        ShownUnit.of(Kind.FLOW_RATE, "m3/s", "m³/s"),
                        ShownUnit.of(Kind.ROTATION, "rev/s", "rev/s"));
            case METRIC ->
                new ShownUnits(
                        ShownUnit.of(Kind.AREA, "cm2", "cm²"),
                        ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "kPa", "kPa"),
                        ShownUnit.of(Kind.TEMPERATURE, "degC", "°C"),
                        ShownUnit.of(Kind.TEMPERATURE_DIFFERENCE, "K", "K"),
                        ShownUnit.of(Kind.FLOW_RATE, "L/min", "L/min"),
                        ShownUnit.of(Kind.ROTATION, "rpm", "rpm"));
            case US ->
                new ShownUnits(
                        ShownUnit.of(Kind.AREA, "in2", "in²"),
                        ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "psi", "psi"),
                        ShownUnit.of(Kind.TEMPERATURE, "degF", "°F"),
                        ShownUnit.of(Kind.TEMPERATURE_DIFFERENCE, "degF", "°F"),
                        ShownUnit.of(Kind.FLOW_RATE, "gpm", "gpm"),
                        ShownUnit.of(Kind.ROTATION, "rpm", "rpm"));
        };
    }

    /** The units shown in brackets beside those of a system. */
    public static ShownUnits beside(UnitSystem system) {
        return of(system == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
    }
}
