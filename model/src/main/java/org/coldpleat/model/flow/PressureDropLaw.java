package org.coldpleat.model.flow;

/**
 * Pressure drop of a part as a function of the flow through it: odd, strictly increasing and once continuously
 * differentiable, also through zero flow.
 */
public interface PressureDropLaw {
    /**
     * Pressure drop.
     *
     * @param flowRate volume flow [m3/s], any sign
     * @param fluid oil at the temperature of the part
     * @return pressure before minus pressure after [Pa], same sign as the flow
     */
    double pressureDrop(double flowRate, Fluid fluid);

    /**
     * Slope of the pressure drop.
     *
     * @param flowRate volume flow [m3/s], any sign
     * @param fluid oil at the temperature of the part
     * @return d(pressure drop)/d(flow) [Pa s/m3], above 0
     */
    double slope(double flowRate, Fluid fluid);

    /**
     * Drop and slope in one call, for laws that find both at once.
     *
     * @param flowRate volume flow [m3/s], any sign
     * @param fluid oil at the temperature of the part
     * @return pressure drop [Pa] and slope [Pa s/m3]
     */
    default Drop at(double flowRate, Fluid fluid) {
        return new Drop(pressureDrop(flowRate, fluid), slope(flowRate, fluid));
    }

    /** Follows the drop while a flow settles. */
    default DropFollower follower() {
        return new PlainFollower(this);
    }
}
