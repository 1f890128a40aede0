package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.function.Consumer;
import org.coldpleat.shared.casefile.Completion;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/** Completes the start of a case whose engine is known by kind and size. */
final class StartCompletion {
    private static final double IDLING = 60;

    /** Heat capacity of warm engine oil [J/(m3 K)]. */
    private static final double OIL_HEAT = 1.75e6;

    /** Pump speed at which oil takes up the metal's heat as stated [rev/s]: 800 rpm. */
    private static final double FIRST_IDLE = 800.0 / 60;

    private static final double DRIVING = 40 * 60;

    private StartCompletion() {}

    static void fill(Completion start, Section engine, StandIns standIns) {
        Measured idle = standIns.typical().of("coldIdleSpeed", Kind.ROTATION);
        Measured driving = standIns.typical().of("drivingSpeed", Kind.ROTATION);
        start.list(
                "schedules",
                List.of(schedule -> schedule.text("name", "usual start")
                        .list("phases", List.of(phase(idle, IDLING), phase(driving, DRIVING)))));
        standIns.fill(start, "galleryVolume", "galleryVolume", Kind.VOLUME);
        if (!start.has("trace")) {
            start.section("thermal", thermal -> thermal(thermal, engine, standIns));
        }
    }

    private static void thermal(Completion thermal, Section engine, StandIns standIns) {
        oilFill(thermal, "oilVolume", engine, standIns);
        if (!thermal.has("metalMass")) {
            standIns.fill(thermal, "metalHeatCapacity", "metalHeatCapacity", Kind.HEAT_CAPACITY);
        }
        Measured warming = standIns.typical().of("oilWarmsIn", Kind.DURATION);
        double oilToMetal = OIL_HEAT * usualFill(engine, standIns).value() / warming.value();
        standIns.following(thermal, "oilToMetal", "oilWarmsIn", Kind.HEAT_CONDUCTANCE, oilToMetal, warming);
        for (String key : List.of("metalToAmbient", "oilToAmbient")) {
            standIns.fill(thermal, key, key, Kind.HEAT_CONDUCTANCE);
        }
        thermal.list(
                "heats",
                List.of(
                        heat("coldIdleSpeed", "heatColdIdle", standIns),
                        heat("drivingSpeed", "heatDriving", standIns)));
        if (standIns.typical().knows("coolantHeatCapacity")) {
            thermal.quantity("oilToMetalSpeed", Measured.exact(Kind.ROTATION, FIRST_IDLE, Provenance.TYPICAL));
            thermal.section("coolant", coolant -> coolant(coolant, standIns));
        }
    }

    private static void coolant(Completion coolant, StandIns standIns) {
        standIns.fill(coolant, "heatCapacity", "coolantHeatCapacity", Kind.HEAT_CAPACITY);
        standIns.fill(coolant, "combustionShare", "combustionShare", Kind.FRACTION);
        standIns.fill(coolant, "toMetal", "coolantToMetal", Kind.HEAT_CONDUCTANCE);
        standIns.fill(coolant, "toOil", "coolantToOil", Kind.HEAT_CONDUCTANCE);
        standIns.fill(coolant, "radiator", "radiator", Kind.HEAT_CONDUCTANCE);
        standIns.fill(coolant, "opens", "thermostatOpens", Kind.TEMPERATURE);
    }

    private static Consumer<Completion> phase(Measured speed, double duration) {
        return phase -> phase.quantity("speed", speed)
                .quantity("duration", Measured.exact(Kind.DURATION, duration, Provenance.TYPICAL));
    }

    private static Consumer<Completion> heat(String speed, String toMetal, StandIns standIns) {
        return heat -> {
            standIns.fill(heat, "speed", speed, Kind.ROTATION);
            standIns.fill(heat, "toMetal", toMetal, Kind.POWER);
        };
    }

    /** Fills in the oil that a change takes: as stated of the engine, or typical. */
    static void oilFill(Completion section, String key, Section engine, StandIns standIns) {
        if (engine.has("oilFill")) {
            section.quantity(key, usualFill(engine, standIns));
        } else {
            standIns.fill(section, key, "oilFill", Kind.VOLUME);
        }
    }

    private static Measured usualFill(Section engine, StandIns standIns) {
        return engine.quantity("oilFill").orElseGet(() -> standIns.typical().of("oilFill", Kind.VOLUME));
    }
}
