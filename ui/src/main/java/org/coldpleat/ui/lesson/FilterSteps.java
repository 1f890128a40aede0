package org.coldpleat.ui.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.ui.service.OpenedCase;

/** Questions about the filter itself: its area, its medium, its pleats and its valve. */
final class FilterSteps {
    private static final String PLEATS = "pleats.count";
    private static final String STRIP = "medium.strip.length";
    private static final String THICKNESS = "medium.thickness";
    private static final String OPENING = "bypass.openingPressure";
    private static final double STIFFER = 22.0 / 12;
    private static final double THICKER = 1.5;
    private static final double HALF = 0.5;
    private static final double PLEAT_STEP = 0.25;
    private static final double MOST_PLEATS = 6;

    /** What the picture of the first step shows beside the candidate. */
    static final Map<String, Double> HALF_AREA = Map.of(PLEATS, HALF, STRIP, HALF);

    /** The same for twice the pleats. */
    static final Map<String, Double> TWICE_THE_PLEATS = Map.of(PLEATS, 2.0, STRIP, 2.0);

    /** The same for a thicker medium. */
    static final Map<String, Double> THICK = Map.of(THICKNESS, THICKER);

    /** What the picture of a stiffer valve shows beside the candidate. */
    static final Map<String, Double> STIFF = Map.of(OPENING, STIFFER);

    private FilterSteps() {}

    /** The same medium, half the area, at the same flow. */
    static Optional<LessonAnswer> area(LessonCase one) {
        double flow = one.flow();
        double warm = one.warmest();
        return withPleats(one, HALF).map(half -> {
            double whole = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
            double halved = one.atFlow(half, flow, warm).elementPressureDrop();
            return LessonAnswer.of(
                    halved / whole,
                    one.candidate(),
                    Numbers.flow(flow),
                    Numbers.temperature(warm),
                    Numbers.pressure(whole),
                    Numbers.pressure(halved));
        });
    }

    /** The same change on a stand that forces its flow, and on the engine. */
    static Optional<LessonAnswer> standAndEngine(LessonCase one) {
        if (one.standState().isEmpty() || one.engineState().isEmpty()) {
            return Optional.empty();
        }
        String stand = one.standState().get();
        String engine = one.engineState().get();
        OptionalDouble onStand = one.opening(one.opened(), stand);
        OptionalDouble onEngine = one.opening(one.opened(), engine);
        if (onStand.isEmpty()) {
            return Optional.of(LessonAnswer.told("never", one.candidate(), stand, engine));
        }
        if (onEngine.isEmpty()) {
            return Optional.of(LessonAnswer.told(
                    "standOnly", one.candidate(), stand, engine, Numbers.temperature(onStand.getAsDouble())));
        }
        double difference = onStand.getAsDouble() - onEngine.getAsDouble();
        return Optional.of(LessonAnswer.of(
                difference,
                one.candidate(),
                stand,
                engine,
                Numbers.temperature(onStand.getAsDouble()),
                Numbers.temperature(onEngine.getAsDouble())));
    }

    /** A stiffer bypass valve; what a scale said of the present one is left aside. */
    static Optional<LessonAnswer> setting(LessonCase one) {
        String path = one.path(OPENING);
        List<String> scale = List.of(one.path("tests.scaleTest"));
        return one.quantity(path)
                .flatMap(now -> one.changed(Map.of(), scale)
                        .flatMap(asStated -> one.changed(Map.of(path, STIFFER), scale)
                                .flatMap(stiff -> setting(one, now.value(), asStated, stiff))));
    }

    private static Optional<LessonAnswer> setting(
            LessonCase one, double opening, OpenedCase asStated, OpenedCase stiff) {
        String state = one.standState().orElse(one.state());
        OptionalDouble before = one.opening(asStated, state);
        OptionalDouble after = one.opening(stiff, state);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        String from = Numbers.pressure(opening);
        String to = Numbers.pressure(STIFFER * opening);
        String was = Numbers.temperature(before.getAsDouble());
        return Optional.of(
                after.isEmpty()
                        ? LessonAnswer.told("never", one.candidate(), state, from, to, was)
                        : LessonAnswer.of(
                                before.getAsDouble() - after.getAsDouble(),
                                one.candidate(),
                                state,
                                from,
                                to,
                                was,
                                Numbers.temperature(after.getAsDouble())));
    }

    /** More and more pleats in the same can. */
    static Optional<LessonAnswer> pleats(LessonCase one) {
        Optional<Measured> count = one.quantity(one.path(PLEATS));
        if (count.isEmpty()) {
            return Optional.empty();
        }
        double flow = one.flow();
        double warm = one.warmest();
        double now = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
        double best = now;
        double bestFactor = 1;
        for (double factor = 1 + PLEAT_STEP; factor <= MOST_PLEATS; factor += PLEAT_STEP) {
            Optional<OpenedCase> more = withPleats(one, factor);
            if (more.isEmpty()) {
                break;
            }
            double drop = one.atFlow(more.get(), flow, warm).elementPressureDrop();
            if (drop < best) {
                best = drop;
                bestFactor = factor;
            }
        }
        double pleats = count.get().value();
        String variant = bestFactor == 1 ? "full" : "";
        return Optional.of(LessonAnswer.variant(
                variant,
                Math.rint(pleats * bestFactor),
                one.candidate(),
                Numbers.count(pleats),
                Numbers.count(pleats * bestFactor),
                Numbers.pressure(now),
                Numbers.pressure(best),
                Numbers.plain(now / best)));
    }

    /** A thicker medium with the same evidence. */
    static Optional<LessonAnswer> thickness(LessonCase one) {
        double flow = one.flow();
        double warm = one.warmest();
        return one.scaled(Map.of(one.path(THICKNESS), THICKER)).map(thick -> {
            double before = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
            double after = one.atFlow(thick, flow, warm).elementPressureDrop();
            boolean byAir = one.quantity(one.path("medium.airTest.pressure")).isPresent();
            return LessonAnswer.variant(
                    byAir ? "byAir" : "",
                    after / before,
                    one.candidate(),
                    Numbers.plain(THICKER),
                    Numbers.pressure(before),
                    Numbers.pressure(after));
        });
    }

    private static Optional<OpenedCase> withPleats(LessonCase one, double factor) {
        Map<String, Double> factors = new LinkedHashMap<>();
        factors.put(one.path(PLEATS), factor);
        if (one.quantity(one.path(STRIP)).isPresent()) {
            factors.put(one.path(STRIP), factor);
        }
        return one.scaled(factors);
    }
}
