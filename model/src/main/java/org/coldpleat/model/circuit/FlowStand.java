package org.coldpleat.model.circuit;

import java.util.List;
import java.util.Objects;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.shared.quantity.Require;

/**
 * Laboratory stand: pushes a stated flow through a filter into an open vessel.
 *
 * @param filter drop over its total flow
 * @param lubricant oil
 */
public record FlowStand(PressureDropLaw filter, Lubricant lubricant) {
    public FlowStand {
        Objects.requireNonNull(filter, "filter");
        Objects.requireNonNull(lubricant, "lubricant");
    }

    /**
     * State at a stated flow.
     *
     * @param flowRate [m3/s], at least 0
     * @param temperature of the oil [K], above 0
     */
    public OperatingPoint solve(double flowRate, double temperature) {
        Require.notNegative("flowRate", flowRate, "m3/s");
        Require.positive("temperature", temperature, "K");
        Fluid fluid = lubricant.at(temperature);
        double drop = filter.pressureDrop(flowRate, fluid);
        SolveStatus status = flowRate == 0
                ? SolveStatus.NO_FLOW
                : Double.isFinite(drop) ? SolveStatus.CONVERGED : SolveStatus.NOT_FINITE;
        return new OperatingPoint(
                status,
                0,
                temperature,
                drop,
                0,
                0,
                flowRate,
                List.of(),
                flowRate,
                drop,
                0,
                0,
                0,
                temperature,
                false,
                false,
                OperatingPoint.Residuals.ZERO,
                0);
    }
}
