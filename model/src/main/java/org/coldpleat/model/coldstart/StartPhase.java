package org.coldpleat.model.coldstart;

/**
 * Stretch of a start at one speed. Holds what was asked for, sound or not; {@link StartSchedule#faults} judges it.
 *
 * @param duration [s], above 0; infinite for a last phase without end
 * @param speed of the pump and of the shaft in the bearings [rev/s], at least 0
 * @param heatToMetal combustion and friction heat that reaches the metal [W], at least 0
 * @param heatToOil heat that reaches the oil directly, such as from piston and valve gear [W], at least 0
 */
public record StartPhase(double duration, double speed, double heatToMetal, double heatToOil) {
    /** A phase without end. */
    public static StartPhase endless(double speed, double heatToMetal, double heatToOil) {
        return new StartPhase(Double.POSITIVE_INFINITY, speed, heatToMetal, heatToOil);
    }

    /** Whether the phase has no end. */
    public boolean isEndless() {
        return duration == Double.POSITIVE_INFINITY;
    }
}
