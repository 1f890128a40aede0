package org.coldpleat.model.flow;

/**
 * Flow through a part as a function of the pressure difference across it, for valves whose opening depends on that
 * difference: non-decreasing and once continuously differentiable.
 */
public interface FlowLaw {
    /**
     * Flow.
     *
     * @param pressureDifference pressure before minus pressure after [Pa], any sign
     * @param fluid oil at the temperature of the part
     * @return volume flow [m3/s]
     */
    double flowRate(double pressureDifference, Fluid fluid);

    /**
     * Slope of the flow.
     *
     * @param pressureDifference pressure before minus pressure after [Pa], any sign
     * @param fluid oil at the temperature of the part
     * @return d(flow)/d(pressure difference) [m3/(s Pa)], at least 0
     */
    double flowSlope(double pressureDifference, Fluid fluid);

    /**
     * Flow and slope at once, for the price of about one.
     *
     * @param pressureDifference pressure before minus pressure after [Pa], any sign
     * @param fluid oil at the temperature of the part
     */
    default FlowWithSlope passage(double pressureDifference, Fluid fluid) {
        return new FlowWithSlope(flowRate(pressureDifference, fluid), flowSlope(pressureDifference, fluid));
    }
}
