package org.coldpleat.model.run;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/** Finds what keeps an engine from being computed although each of its values reads well. */
final class EngineCheck {
    private EngineCheck() {}

    static void check(Section engine, Section oil, Problems problems) {
        engine.section("gallery")
                .flatMap(gallery -> gallery.section("hotReading"))
                .ifPresent(reading -> checkReading(reading, engine.sections("reliefValves"), problems));
        if (!problems.isEmpty()) {
            return;
        }
        OilResult result = OilResolver.resolve(OilBuilder.spec(oil, Inputs.shared()));
        if (result instanceof OilResult.Resolved resolved) {
            try {
                EngineBuilder.engine(engine, new OilLubricant(resolved.oil()), Inputs.shared());
            } catch (IllegalArgumentException e) {
                problems.addWhole(engine, "engine.contradiction", e.getMessage());
            }
        }
    }

    /** With a relief valve open at the reading, the pump's delivery is not what reaches the gallery. */
    private static void checkReading(Section reading, List<Section> reliefs, Problems problems) {
        Optional<Measured> pressure = reading.quantity("pressure");
        for (Section relief : reliefs) {
            Optional<Measured> opening = relief.quantity("openingPressure");
            if (pressure.isPresent()
                    && opening.isPresent()
                    && pressure.get().value() >= opening.get().value()
                    && !reading.has("flow")) {
                problems.add(
                        reading,
                        "pressure",
                        "engine.reliefOpenAtReading",
                        Text.kilopascals(pressure.get().value()),
                        Text.kilopascals(opening.get().value()));
            }
        }
    }
}
