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
        return point(status(flowRate, drop), flowRate, temperature, drop);
    }

    /** How a flow [m3/s] through a filter with a drop [Pa] ended. */
    public static SolveStatus status(double flowRate, double drop) {
        if (flowRate == 0) {
            return SolveStatus.NO_FLOW;
        }
        return Double.isFinite(drop) ? SolveStatus.CONVERGED : SolveStatus.NOT_FINITE;
    }

    /** The state of the stand at a flow [m3/s], temperature [K] and drop [Pa]. */
    public static OperatingPoint point(SolveStatus status, double flowRate, double temperature, double drop) {
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
                0,
                false,
                false,
                OperatingPoint.Residuals.ZERO,
                0);
    }
}
