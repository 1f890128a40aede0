package org.coldpleat.ui.chart.style;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.quantity.Units;

/**
 * The units of a chart. Curves, grid and near axes are in the units that are preferred; the axes on the far sides help
 * readers of the others. Volumes and flows of SI charts are in liters, since an axis in cubic meters would hold zeros
 * only; dust is weighed in grams everywhere.
 *
 * @param temperature unit of oil temperature
 * @param farTemperature unit of the axis at the top
 * @param spread symbol of differences of temperature
 * @param pressure unit of pressure differences
 * @param farPressure unit of the axis at the right
 * @param flow unit of flow
 * @param farFlow unit of flow of the axis at the right
 * @param volume unit of oil
 * @param area unit of media area
 * @param viscosity unit of dynamic viscosity
 */
public record ChartUnits(
        Unit temperature,
        Unit farTemperature,
        String spread,
        Unit pressure,
        Unit farPressure,
        Unit flow,
        Unit farFlow,
        Unit volume,
        Unit area,
        Unit viscosity) {
    /** The units a family is read in, beside those of the metric trade; beside the US units for the latter. */
    public static ChartUnits of(UnitSystem preferred) {
        return switch (preferred) {
            case METRIC ->
                new ChartUnits(
                        celsius(),
                        fahrenheit(),
                        "K",
                        pressure("kPa"),
                        pressure("psi"),
                        flow("L/min"),
                        flow("gpm"),
                        Units.require(Kind.VOLUME, "L"),
                        Units.require(Kind.AREA, "cm2"),
                        Units.require(Kind.DYNAMIC_VISCOSITY, "mPa·s"));
            case US ->
                new ChartUnits(
                        fahrenheit(),
                        celsius(),
                        fahrenheit().symbol(),
                        pressure("psi"),
                        pressure("kPa"),
                        flow("gpm"),
                        flow("L/min"),
                        Units.require(Kind.VOLUME, "qt"),
                        Units.require(Kind.AREA, "in2"),
                        Units.require(Kind.DYNAMIC_VISCOSITY, "cP"));
            case SI ->
                new ChartUnits(
                        Units.require(Kind.TEMPERATURE, "K"),
                        celsius(),
                        "K",
                        pressure("Pa"),
                        pressure("kPa"),
                        flow("L/s"),
                        flow("L/min"),
                        Units.require(Kind.VOLUME, "L"),
                        Units.require(Kind.AREA, "m2"),
                        Units.require(Kind.DYNAMIC_VISCOSITY, "Pa·s"));
        };
    }

    /** Symbol of the unit of area as it is printed. */
    public String areaSymbol() {
        return area.symbol().replace('2', '²');
    }

    private static Unit celsius() {
        return Units.require(Kind.TEMPERATURE, "degC");
    }

    private static Unit fahrenheit() {
        return Units.require(Kind.TEMPERATURE, "degF");
    }

    private static Unit pressure(String symbol) {
        return Units.require(Kind.PRESSURE_DIFFERENCE, symbol);
    }

    private static Unit flow(String symbol) {
        return Units.require(Kind.FLOW_RATE, symbol);
    }
}
