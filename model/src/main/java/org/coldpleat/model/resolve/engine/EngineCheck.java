package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.Problems;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Measured;

/** Finds what keeps an engine from being computed although each of its values reads well. */
public final class EngineCheck {
    private EngineCheck() {}

    public static void check(Section engine, Optional<Oil> oil, Problems problems) {
        engine.section("gallery")
                .flatMap(gallery -> gallery.section("hotReading"))
                .ifPresent(reading -> checkReading(reading, engine.sections("reliefValves"), problems));
        if (oil.isEmpty() || !problems.isEmpty()) {
            return;
        }
        try {
            EngineBuilder.engine(engine, new OilLubricant(oil.get()), Inputs.shared());
        } catch (IllegalArgumentException e) {
            problems.addWhole(engine, "engine.contradiction", e.getMessage());
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
                        Amount.pressure(pressure.get().value()).text(),
                        Amount.pressure(opening.get().value()).text());
            }
        }
    }
}
