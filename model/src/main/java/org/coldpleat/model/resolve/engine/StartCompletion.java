package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.Completion;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Completes the start of a case whose engine is known by kind and size. */
final class StartCompletion {
    /** Running time a week that stands in [s]: 7 h. */
    static final double WEEKLY = 7 * 3600;

    private static final double IDLING = 60;

    /** Heat capacity of warm engine oil [J/(m3 K)]. */
    private static final double OIL_HEAT = 1.75e6;

    /** Pump speed at which oil takes up the metal's heat as stated [rev/s]: 800 rpm. */
    private static final double FIRST_IDLE = 800.0 / 60;

    /** Least share of the heat of combustion that reaches the coolant before the metal [1]. */
    @Source("common practice, no source: heads and liners stand in coolant, the rest of the block does not")
    private static final double COOLANT_FIRST = 0.5;

    /** Thermostat begins to open [K]: 82 degrees C give or take 4. */
    @Source("workshop manuals, from notes: 82 to 90 degrees C")
    private static final double OPENS = 355.15;

    private static final double OPENS_SPREAD = 4;
    private static final double DRIVING = 40 * 60;

    private StartCompletion() {}

    static void fill(Completion start, Section engine, TypicalEngine typical) {
        Measured idle = typical.of("coldIdleSpeed", Kind.ROTATION);
        Measured driving = typical.of("drivingSpeed", Kind.ROTATION);
        start.list(
                "schedules",
                List.of(schedule -> schedule.text("name", "usual start")
                        .list("phases", List.of(phase(idle, IDLING), phase(driving, DRIVING)))));
        start.quantity("galleryVolume", typical.of("galleryVolume", Kind.VOLUME));
        if (start.has("trace")) {
            return;
        }
        start.section("thermal", thermal -> thermal(thermal, engine, typical, idle, driving));
    }

    private static void thermal(
            Completion thermal, Section engine, TypicalEngine typical, Measured idle, Measured driving) {
        Measured oil = fill(engine, typical);
        thermal.quantity("oilVolume", oil);
        if (!thermal.has("metalMass")) {
            thermal.quantity("metalHeatCapacity", typical.of("metalHeatCapacity", Kind.HEAT_CAPACITY));
        }
        Measured warming = typical.of("oilWarmsIn", Kind.DURATION);
        thermal.quantity(
                "oilToMetal",
                Measured.factor(
                        Kind.HEAT_CONDUCTANCE,
                        OIL_HEAT * oil.value() / warming.value(),
                        warming.halfWidth(),
                        Provenance.TYPICAL));
        for (String key : List.of("metalToAmbient", "oilToAmbient")) {
            thermal.quantity(key, typical.of(key, Kind.HEAT_CONDUCTANCE));
        }
        thermal.list(
                "heats",
                List.of(
                        heat(idle, typical.of("heatColdIdle", Kind.POWER)),
                        heat(driving, typical.of("heatDriving", Kind.POWER))));
        if (typical.knows("coolantHeatCapacity")) {
            thermal.quantity("oilToMetalSpeed", Measured.exact(Kind.ROTATION, FIRST_IDLE, Provenance.TYPICAL));
            thermal.section(
                    "coolant",
                    coolant -> coolant.quantity("heatCapacity", typical.of("coolantHeatCapacity", Kind.HEAT_CAPACITY))
                            .quantity(
                                    "combustionShare",
                                    Measured.between(Kind.FRACTION, COOLANT_FIRST, 1, Provenance.TYPICAL))
                            .quantity("toMetal", typical.of("coolantToMetal", Kind.HEAT_CONDUCTANCE))
                            .quantity("toOil", typical.of("coolantToOil", Kind.HEAT_CONDUCTANCE))
                            .quantity("radiator", typical.of("radiator", Kind.HEAT_CONDUCTANCE))
                            .quantity(
                                    "opens",
                                    Measured.between(
                                            Kind.TEMPERATURE,
                                            OPENS - OPENS_SPREAD,
                                            OPENS + OPENS_SPREAD,
                                            Provenance.TYPICAL)));
        }
    }

    private static Consumer<Completion> phase(Measured speed, double duration) {
        return phase -> phase.quantity("speed", speed)
                .quantity("duration", Measured.exact(Kind.DURATION, duration, Provenance.TYPICAL));
    }

    private static Consumer<Completion> heat(Measured speed, Measured toMetal) {
        return heat -> heat.quantity("speed", speed).quantity("toMetal", toMetal);
    }

    /** Oil that a change takes: as stated, or typical. */
    static Measured fill(Section engine, TypicalEngine typical) {
        return Optional.of(engine)
                .flatMap(one -> one.quantity("oilFill"))
                .orElseGet(() -> typical.of("oilFill", Kind.VOLUME));
    }
}
