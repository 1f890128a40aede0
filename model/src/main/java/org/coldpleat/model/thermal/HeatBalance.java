package org.coldpleat.model.thermal;

/**
 * Where the heat of a start came from and went to, all in [J]. Flows are integrals over time; stores are the change of
 * enthalpy between the temperatures at start and end, found apart from the flows.
 *
 * @param pumpWork into the oil
 * @param filmFriction of the bearings
 * @param toMetal stated heat to the metal
 * @param toOil stated heat to the oil
 * @param oilLoss from the oil to the air
 * @param metalLoss from the metal to the air
 * @param coolantLoss from the coolant to the air
 * @param storedInOil by the oil
 * @param storedInMetal by the metal
 * @param storedInCoolant by the coolant
 * @param storedInElement by the element and its oil
 */
public record HeatBalance(
        double pumpWork,
        double filmFriction,
        double toMetal,
        double toOil,
        double oilLoss,
        double metalLoss,
        double coolantLoss,
        double storedInOil,
        double storedInMetal,
        double storedInCoolant,
        double storedInElement) {
    /** Heat supplied. */
    public double supplied() {
        return pumpWork + filmFriction + toMetal + toOil;
    }

    /** Heat not accounted for over the greater of heat supplied and heat lost [1]. */
    public double residual() {
        double lost = oilLoss + metalLoss + coolantLoss;
        double scale = Math.max(Math.abs(supplied()), Math.abs(lost));
        double miss = supplied() - lost - storedInOil - storedInMetal - storedInCoolant - storedInElement;
        return miss == 0 ? 0 : Math.abs(miss) / scale;
    }
}
