package org.coldpleat.ui.chart;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.quantity.Units;

/**
 * The units of a chart over oil temperature. Curves, grid and near axes are in the units that are preferred; the axes
 * on the far sides help readers of the others.
 *
 * @param temperature unit of oil temperature
 * @param farTemperature unit of the axis at the top
 * @param pressure unit of pressure differences
 * @param farPressure unit of the axis at the right
 */
record ChartUnits(Unit temperature, Unit farTemperature, Unit pressure, Unit farPressure) {
    /** The units a family is read in, beside those of the metric trade; beside the US units for the latter. */
    static ChartUnits of(UnitSystem preferred) {
        return switch (preferred) {
            case METRIC -> of("degC", "degF", "kPa", "psi");
            case US -> of("degF", "degC", "psi", "kPa");
            case SI -> of("K", "degC", "Pa", "kPa");
        };
    }

    private static ChartUnits of(String temperature, String farTemperature, String pressure, String farPressure) {
        return new ChartUnits(
                Units.require(Kind.TEMPERATURE, temperature),
                Units.require(Kind.TEMPERATURE, farTemperature),
                Units.require(Kind.PRESSURE_DIFFERENCE, pressure),
                Units.require(Kind.PRESSURE_DIFFERENCE, farPressure));
    }
}
