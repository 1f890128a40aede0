package org.coldpleat.ui.chart.style;

import java.util.Optional;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.quantity.Units;

/**
 * The units of a chart. Curves, grid and near axes are in the units that are preferred; a metric chart has those of the US
 * trade on the far sides. Volumes and flows of SI charts are in liters, since an axis in cubic meters would hold zeros
 * only; dust is weighed in grams everywhere.
 *
 * @param temperature unit of oil temperature
 * @param spread symbol of differences of temperature
 * @param pressure unit of pressure differences
 * @param flow unit of flow
 * @param volume unit of oil
 * @param area unit of media area
 * @param viscosity unit of dynamic viscosity
 * @param far units of the far sides, if any
 */
public record ChartUnits(
        Unit temperature,
        String spread,
        Unit pressure,
        Unit flow,
        Unit volume,
        Unit area,
        Unit viscosity,
        Optional<ChartUnits> far) {
    /** The units a family is read in. */
    public static ChartUnits of(UnitSystem preferred) {
        boolean si = preferred == UnitSystem.SI;
        return new ChartUnits(
                preferred.unit(Kind.TEMPERATURE),
                preferred.unit(Kind.TEMPERATURE_DIFFERENCE).symbol(),
                preferred.unit(Kind.PRESSURE_DIFFERENCE),
                si ? Units.require(Kind.FLOW_RATE, "L/s") : preferred.unit(Kind.FLOW_RATE),
                si ? Units.require(Kind.VOLUME, "L") : preferred.unit(Kind.VOLUME),
                preferred.unit(Kind.AREA),
                preferred.unit(Kind.DYNAMIC_VISCOSITY),
                preferred == UnitSystem.METRIC ? Optional.of(of(UnitSystem.US)) : Optional.empty());
    }
}
