package org.coldpleat.model.flow;

/**
 * Valve that one pressure opens while another drives the oil through it, as a relief valve that senses the gallery and dumps
 * from the pump outlet: non-decreasing in both and once continuously differentiable.
 */
public interface PilotedLaw {
    /**
     * Flow and slopes.
     *
     * @param opening pressure that opens the valve [Pa]
     * @param driving pressure difference across the valve [Pa]
     * @param fluid oil at the temperature of the valve
     */
    Piloted at(double opening, double driving, Fluid fluid);

    /**
     * Flow through a valve and what moves it.
     *
     * @param flowRate [m3/s]
     * @param byOpening d(flow)/d(opening pressure) [m3/(s Pa)]
     * @param byDriving d(flow)/d(driving pressure difference) [m3/(s Pa)]
     */
    record Piloted(double flowRate, double byOpening, double byDriving) {}
}
