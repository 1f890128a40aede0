package org.coldpleat.model.coldstart;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.thermal.TemperatureTrace;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.shared.quantity.Require;

/**
 * A start-up to be computed.
 *
 * @param engine circuit; its own series element is not used
 * @param filter put in its place
 * @param thermal heat model; with a trace only the element's part of it counts
 * @param trace logged oil temperature that replaces the heat balance of the oil
 * @param schedule what the engine does
 * @param startTemperature of oil and element before the first turn [K], above 0; with a trace the oil has the trace's
 * @param metalTemperature of metal and coolant before the first turn [K], above 0
 * @param galleryVolume empty passages to be filled before pressure stands in the gallery [m3], at least 0; may count a can
 *     that has drained
 * @param hotTemperature of the oil, whose time is wanted [K], above 0
 * @param horizon computed time unless the schedule ends before [s], above 0
 * @param tolerance of the temperatures over a step [K], 1e-12 to 1e-2; volumes and energies follow in proportion
 */
public record StartUpSpec(
        EngineCircuit engine,
        FilterAssembly filter,
        ThermalModel thermal,
        Optional<TemperatureTrace> trace,
        StartSchedule schedule,
        double startTemperature,
        double metalTemperature,
        double galleryVolume,
        double hotTemperature,
        double horizon,
        double tolerance) {
    /** Usual tolerance [K]; valve times then hold within about 1 ms. */
    public static final double USUAL_TOLERANCE = 1e-5;

    public StartUpSpec {
        Objects.requireNonNull(engine, "engine");
        Objects.requireNonNull(filter, "filter");
        Objects.requireNonNull(thermal, "thermal");
        Objects.requireNonNull(trace, "trace");
        Objects.requireNonNull(schedule, "schedule");
        Require.positive("startTemperature", startTemperature, "K");
        Require.positive("metalTemperature", metalTemperature, "K");
        Require.notNegative("galleryVolume", galleryVolume, "m3");
        Require.positive("hotTemperature", hotTemperature, "K");
        Require.positive("horizon", horizon, "s");
        Require.within("tolerance", tolerance, 1e-12, 1e-2, "K");
    }

    /** A start of an engine soaked through: metal as cold as the oil. */
    public StartUpSpec(
            EngineCircuit engine,
            FilterAssembly filter,
            ThermalModel thermal,
            Optional<TemperatureTrace> trace,
            StartSchedule schedule,
            double startTemperature,
            double galleryVolume,
            double hotTemperature,
            double horizon,
            double tolerance) {
        this(
                engine,
                filter,
                thermal,
                trace,
                schedule,
                startTemperature,
                startTemperature,
                galleryVolume,
                hotTemperature,
                horizon,
                tolerance);
    }

    /** The same engine soaked through at another temperature [K]: oil, metal, element and air. */
    public StartUpSpec coldSoakedAt(double temperature) {
        return new StartUpSpec(
                engine,
                filter,
                thermal.withAmbient(temperature),
                trace,
                schedule,
                temperature,
                temperature,
                galleryVolume,
                hotTemperature,
                horizon,
                tolerance);
    }

    /** The same start with another filter. */
    public StartUpSpec withFilter(FilterAssembly other) {
        return new StartUpSpec(
                engine,
                other,
                thermal,
                trace,
                schedule,
                startTemperature,
                metalTemperature,
                galleryVolume,
                hotTemperature,
                horizon,
                tolerance);
    }

    /** The same start to another tolerance [K]. */
    public StartUpSpec withTolerance(double other) {
        return new StartUpSpec(
                engine,
                filter,
                thermal,
                trace,
                schedule,
                startTemperature,
                metalTemperature,
                galleryVolume,
                hotTemperature,
                horizon,
                other);
    }

    /** End of the computed time [s]. */
    public double end() {
        return Math.min(horizon, schedule.duration());
    }
}
