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

/** Completes the start of a case whose engine is known by kind and size. */
final class StartCompletion {
    /** Running time a week that stands in [s]: 7 h. */
    static final double WEEKLY = 7 * 3600;

    private static final double IDLING = 60;
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
        double share = typical.of("heatToOilShare", Kind.FRACTION).value();
        start.section("thermal", thermal -> {
            thermal.quantity("oilVolume", fill(engine, typical));
            if (!thermal.has("metalMass")) {
                thermal.quantity("metalHeatCapacity", typical.of("metalHeatCapacity", Kind.HEAT_CAPACITY));
            }
            for (String key : List.of("oilToMetal", "metalToAmbient", "oilToAmbient")) {
                thermal.quantity(key, typical.of(key, Kind.HEAT_CONDUCTANCE));
            }
            thermal.list(
                    "heats",
                    List.of(
                            heat(idle, typical.of("heatColdIdle", Kind.POWER), share),
                            heat(driving, typical.of("heatDriving", Kind.POWER), share)));
        });
    }

    private static Consumer<Completion> phase(Measured speed, double duration) {
        return phase -> phase.quantity("speed", speed)
                .quantity("duration", Measured.exact(Kind.DURATION, duration, Provenance.TYPICAL));
    }

    private static Consumer<Completion> heat(Measured speed, Measured toMetal, double share) {
        return heat -> heat.quantity("speed", speed)
                .quantity("toMetal", toMetal)
                .quantity(
                        "toOil",
                        Measured.factor(
                                Kind.POWER, share * toMetal.value(), toMetal.halfWidth(), Provenance.TYPICAL));
    }

    /** Oil that a change takes: as stated, or typical. */
    static Measured fill(Section engine, TypicalEngine typical) {
        return Optional.of(engine)
                .flatMap(one -> one.quantity("oilFill"))
                .orElseGet(() -> typical.of("oilFill", Kind.VOLUME));
    }
}
