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
        UnitSystem far = preferred == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC;
        boolean si = preferred == UnitSystem.SI;
        return new ChartUnits(
                preferred.unit(Kind.TEMPERATURE),
                far.unit(Kind.TEMPERATURE),
                preferred.unit(Kind.TEMPERATURE_DIFFERENCE).symbol(),
                preferred.unit(Kind.PRESSURE_DIFFERENCE),
                far.unit(Kind.PRESSURE_DIFFERENCE),
                si ? Units.require(Kind.FLOW_RATE, "L/s") : preferred.unit(Kind.FLOW_RATE),
                far.unit(Kind.FLOW_RATE),
                si ? Units.require(Kind.VOLUME, "L") : preferred.unit(Kind.VOLUME),
                preferred.unit(Kind.AREA),
                preferred.unit(Kind.DYNAMIC_VISCOSITY));
    }
}
