package org.coldpleat.ui.text;

import org.coldpleat.model.explain.Explanation;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;

/** The value of a link of an explanation with its unit. */
final class ExplainedValue {
    private static final double HOUR = 3600;

    private final UnitSystem system;
    private final ShownUnits units;

    private ExplainedValue(UnitSystem system) {
        this.system = system;
        units = ShownUnits.of(system);
    }

    /** Value and unit; blank where there is no number. */
    static String of(Explanation link, UnitSystem units) {
        return new ExplainedValue(units).value(link);
    }

    private String value(Explanation link) {
        if (!Double.isFinite(link.value())) {
            return "";
        }
        ShownUnit unit = unit(link.kind(), link.value());
        return (Figures.plain(unit.of(link.value())) + " " + unit.symbol()).strip();
    }

    private ShownUnit unit(Kind kind, double value) {
        boolean si = system == UnitSystem.SI;
        return switch (kind) {
            case TEMPERATURE -> units.temperature();
            case TEMPERATURE_DIFFERENCE -> units.temperatureDifference();
            case PRESSURE_DIFFERENCE, GAUGE_PRESSURE -> units.pressure();
            case FLOW_RATE -> units.flow();
            case AREA -> units.area();
            case ROTATION -> units.rotation();
            case LENGTH -> si ? ShownUnit.scaled("m", 1) : ShownUnit.scaled("mm", 1e3);
            case KINEMATIC_VISCOSITY -> si ? ShownUnit.scaled("m²/s", 1) : ShownUnit.scaled("cSt", 1e6);
            case DYNAMIC_VISCOSITY -> si ? ShownUnit.scaled("Pa·s", 1) : ShownUnit.scaled("mPa·s", 1e3);
            case BASIS_WEIGHT -> si ? ShownUnit.scaled("kg/m²", 1) : ShownUnit.scaled("g/m²", 1e3);
            case MASS -> si ? ShownUnit.scaled("kg", 1) : ShownUnit.scaled("g", 1e3);
            case MASS_RATE -> si ? ShownUnit.scaled("kg/s", 1) : ShownUnit.scaled("mg/h", 1e6 * HOUR);
            case DURATION -> si || Math.abs(value) < HOUR ? ShownUnit.scaled("s", 1) : ShownUnit.scaled("h", 1 / HOUR);
            case FRACTION -> ShownUnit.scaled("%", 100);
            case COUNT, RATIO -> ShownUnit.scaled("", 1);
            default -> ShownUnit.scaled(kind.siUnit(), 1);
        };
    }
}
