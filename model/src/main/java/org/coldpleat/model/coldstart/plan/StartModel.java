package org.coldpleat.model.coldstart.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.thermal.Coolant;
import org.coldpleat.model.thermal.TemperatureTrace;

/**
 * The start of a case in computing form.
 *
 * @param from temperature of oil, metal and filter before the start [K]
 * @param metalFrom temperature of metal and coolant before the start [K]
 * @param filledAt temperature at which the stated volume of oil was there [K]; the charge stays the same from wherever a
 *     start is made
 * @param ambient [K]
 * @param hot temperature that counts as hot [K]
 * @param galleryVolume to be filled first [m3]
 * @param heat of oil and metal
 * @param heats combustion heat over engine speed
 * @param schedules by name; speeds are those of the engine
 * @param trace logged oil temperature, if any
 * @param domeFlush share of the flow of a dome valve that flushes the can on its way through the annulus [1]
 * @param holdUps what each candidate holds, in the order of the case
 */
public record StartModel(
        double from,
        double metalFrom,
        double filledAt,
        double ambient,
        double hot,
        double galleryVolume,
        Heat heat,
        HeatTable heats,
        Map<String, List<Phase>> schedules,
        Optional<TemperatureTrace> trace,
        double domeFlush,
        List<HoldUp> holdUps) {
    /**
     * Lumps and conductances; with a logged temperature none of them is used.
     *
     * @param oilVolume [m3]
     * @param metalHeatCapacity [J/K]
     * @param oilToMetal [W/K]
     * @param metalToAmbient [W/K]
     * @param oilToAmbient [W/K]
     * @param oilToMetalSpeed engine speed at which oilToMetal holds [rev/s]; 0 for any
     * @param coolant coolant, if there is any
     */
    record Heat(
            double oilVolume,
            double metalHeatCapacity,
            double oilToMetal,
            double metalToAmbient,
            double oilToAmbient,
            double oilToMetalSpeed,
            Optional<Coolant> coolant) {}

    /**
     * One phase.
     *
     * @param state name of the state, or empty
     * @param speed of the engine [rev/s]
     * @param duration [s]
     * @param toMetal [W]
     * @param toOil [W]
     */
    public record Phase(String state, double speed, double duration, double toMetal, double toOil) {}

    public StartModel {
        schedules = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(schedules));
        holdUps = List.copyOf(holdUps);
    }

    /** The same start from another temperature and with other air [K]. */
    public StartModel withTemperatures(double start, double air) {
        return new StartModel(
                start, start, filledAt, air, hot, galleryVolume, heat, heats, schedules, trace, domeFlush, holdUps);
    }
}
