package org.coldpleat.ui.commandline;

import org.coldpleat.shared.quantity.Kind;

/** The units in which text and tables for spreadsheets are written. JSON is always in coherent SI. */
enum UnitSystem {
    /** Coherent SI. */
    SI(
            ShownUnit.of(Kind.AREA, "m2", "m²"),
            ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "Pa", "Pa"),
            ShownUnit.of(Kind.TEMPERATURE, "K", "K"),
            ShownUnit.scaled("K", 1),
            ShownUnit.of(Kind.FLOW_RATE, "m3/s", "m³/s"),
            ShownUnit.scaled("rev/s", 1)),
    /** Trade units of most of the world. */
    METRIC(
            ShownUnit.of(Kind.AREA, "cm2", "cm²"),
            ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "kPa", "kPa"),
            ShownUnit.of(Kind.TEMPERATURE, "degC", "°C"),
            ShownUnit.scaled("K", 1),
            ShownUnit.of(Kind.FLOW_RATE, "L/min", "L/min"),
            ShownUnit.of(Kind.ROTATION, "rpm", "rpm")),
    /** Trade units of the United States. */
    US(
            ShownUnit.of(Kind.AREA, "in2", "in²"),
            ShownUnit.of(Kind.PRESSURE_DIFFERENCE, "psi", "psi"),
            ShownUnit.of(Kind.TEMPERATURE, "degF", "°F"),
            ShownUnit.scaled("°F", 1.8),
            ShownUnit.of(Kind.FLOW_RATE, "gpm", "gpm"),
            ShownUnit.of(Kind.ROTATION, "rpm", "rpm"));

    private final ShownUnit area;
    private final ShownUnit pressure;
    private final ShownUnit temperature;
    private final ShownUnit temperatureDifference;
    private final ShownUnit flow;
    private final ShownUnit rotation;

    UnitSystem(
            ShownUnit area,
            ShownUnit pressure,
            ShownUnit temperature,
            ShownUnit temperatureDifference,
            ShownUnit flow,
            ShownUnit rotation) {
        this.area = area;
        this.pressure = pressure;
        this.temperature = temperature;
        this.temperatureDifference = temperatureDifference;
        this.flow = flow;
        this.rotation = rotation;
    }

    ShownUnit area() {
        return area;
    }

    ShownUnit pressure() {
        return pressure;
    }

    ShownUnit temperature() {
        return temperature;
    }

    ShownUnit temperatureDifference() {
        return temperatureDifference;
    }

    ShownUnit flow() {
        return flow;
    }

    ShownUnit rotation() {
        return rotation;
    }

    /** The system shown in brackets beside this one. */
    UnitSystem beside() {
        return this == METRIC ? US : METRIC;
    }
}
