package org.coldpleat.model.filter;

/**
 * What one bypass valve does.
 *
 * @param present whether there is such a valve
 * @param flowRate oil through it [m3/s]
 * @param pressureDifference what its faces see [Pa]; without a valve, what one there would see
 * @param openingPressure [Pa]; infinite without a valve
 */
public record ValveState(boolean present, double flowRate, double pressureDifference, double openingPressure) {
    /** Whether the difference exceeds the opening pressure. */
    public boolean isOpen() {
        return pressureDifference > openingPressure;
    }

    /** Difference over opening pressure [1]; 0 without a valve. */
    public double ratio() {
        return pressureDifference / openingPressure;
    }
}
