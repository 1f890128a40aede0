package org.coldpleat.model.bench;

import org.coldpleat.shared.quantity.Require;

/**
 * One line of a flow-bench log.
 *
 * @param pressureDifference before less after [Pa]
 * @param flowRate oil flow [m3/s], above 0
 * @param temperature of the oil in the part [K]
 */
public record FlowRow(double pressureDifference, double flowRate, double temperature) {
    public FlowRow {
        Require.positive("flowRate", flowRate, "m3/s");
        Require.positive("temperature", temperature, "K");
        if (!Double.isFinite(pressureDifference)) {
            throw new IllegalArgumentException("pressureDifference must be finite [Pa], was " + pressureDifference);
        }
    }
}
