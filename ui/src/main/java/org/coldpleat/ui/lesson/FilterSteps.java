package org.coldpleat.ui.lesson;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.change.AreaBy;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.ui.service.OpenedCase;

/** Questions about the filter itself: its area, its medium, its pleats and its valve. */
final class FilterSteps {
    private static final String PLEATS = "pleats.count";
    private static final String THICKNESS = "medium.thickness";
    private static final String STAND = "flowStand.states[0].flow";
    private static final double PLEAT_STEP = 0.25;
    private static final double MOST_PLEATS = 6;

    /** Pleats of the step on area over those counted. */
    static final Turned AREA = Turned.times(0.25, 0.5, 2);

    /** Flow of the stand over that of the case. */
    static final Turned STAND_FLOW = Turned.times(0.2, 1, 2);

    /** Opening pressure over that of the case: from 12 to 22 psi, as is often argued about. */
    static final Turned SETTING = Turned.times(0.5, 22.0 / 12, 3);

    /** Thickness of the medium over that measured. */
    static final Turned THICK = Turned.times(1, 1.5, 2.5);

    /** Pleats over those counted; at 1 the count with the least drop is looked for. */
    static final Turned PLEAT_COUNT = Turned.times(0.5, 1, 3);

    private FilterSteps() {}

    /** The case with so many times the pleats of the candidate. */
    static Optional<OpenedCase> withPleats(LessonCase one, double factor) {
        return one.with(CandidateChange.NONE.timesArea(AreaBy.MORE_PLEATS, factor));
    }

    /** The same; twice as many where the best count is looked for. */
    static Optional<OpenedCase> shownPleats(LessonCase one, double factor) {
        return withPleats(one, factor == PLEAT_COUNT.base() ? 2 : factor);
    }

    /** The case with so many times the opening pressure of the candidate. */
    static Optional<OpenedCase> withOpening(LessonCase one, double factor) {
        return one.with(CandidateChange.NONE.timesOpening(factor));
    }

    /** The case with another reading of the thickness: a value measured anew, not another medium. */
    static Optional<OpenedCase> asThick(LessonCase one, double factor) {
        return one.scaled(Map.of(one.path(THICKNESS), factor));
    }

    /** The same medium, another area, at the same flow. */
    static Optional<LessonAnswer> area(LessonCase one, double factor) {
        double flow = one.flow();
        double warm = one.warmest();
        return withPleats(one, factor).map(half -> {
            double whole = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
            double halved = one.atFlow(half, flow, warm).elementPressureDrop();
            return LessonAnswer.of(
                    halved / whole,
                    Shown.word(one.candidate()),
                    Numbers.flow(flow),
                    Numbers.temperature(warm),
                    Numbers.pressure(whole),
                    Numbers.pressure(halved));
        });
    }

    /** The same change on a stand that forces its flow, and on the engine. */
    static Optional<LessonAnswer> standAndEngine(LessonCase one, double factor) {
        if (one.standState().isEmpty() || one.engineState().isEmpty()) {
            return Optional.empty();
        }
        return one.scaled(Map.of(STAND, factor)).flatMap(turned -> standAndEngine(one, turned));
    }

    private static Optional<LessonAnswer> standAndEngine(LessonCase one, OpenedCase turned) {
        String stand = one.standState().get();
        String engine = one.engineState().get();
        OptionalDouble onStand = one.opening(turned, stand);
        OptionalDouble onEngine = one.opening(one.opened(), engine);
        if (onStand.isEmpty()) {
            return Optional.of(
                    LessonAnswer.told("never", Shown.word(one.candidate()), Shown.word(stand), Shown.word(engine)));
        }
        if (onEngine.isEmpty()) {
            return Optional.of(LessonAnswer.told(
                    "standOnly",
                    Shown.word(one.candidate()),
                    Shown.word(stand),
                    Shown.word(engine),
                    Numbers.temperature(onStand.getAsDouble())));
        }
        double difference = onStand.getAsDouble() - onEngine.getAsDouble();
        return Optional.of(LessonAnswer.of(
                difference,
                Shown.word(one.candidate()),
                Shown.word(stand),
                Shown.word(engine),
                Numbers.temperature(onStand.getAsDouble()),
                Numbers.temperature(onEngine.getAsDouble())));
    }

    /** A stiffer bypass valve. */
    static Optional<LessonAnswer> setting(LessonCase one, double factor) {
        OptionalDouble now = one.openingPressure();
        return now.isEmpty()
                ? Optional.empty()
                : withOpening(one, factor).flatMap(stiff -> setting(one, now.getAsDouble(), factor, stiff));
    }

    private static Optional<LessonAnswer> setting(LessonCase one, double opening, double factor, OpenedCase stiff) {
        String state = one.standState().orElse(one.state());
        OptionalDouble before = one.opening(one.opened(), state);
        OptionalDouble after = one.opening(stiff, state);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Shown from = Numbers.pressure(opening);
        Shown to = Numbers.pressure(factor * opening);
        Shown was = Numbers.temperature(before.getAsDouble());
        return Optional.of(
                after.isEmpty()
                        ? LessonAnswer.told("never", Shown.word(one.candidate()), Shown.word(state), from, to, was)
                        : LessonAnswer.of(
                                before.getAsDouble() - after.getAsDouble(),
                                Shown.word(one.candidate()),
                                Shown.word(state),
                                from,
                                to,
                                was,
                                Numbers.temperature(after.getAsDouble())));
    }

    /** More and more pleats in the same can, or so many of them. */
    static Optional<LessonAnswer> pleats(LessonCase one, double factor) {
        return factor == PLEAT_COUNT.base() ? bestPleats(one) : triedPleats(one, factor);
    }

    private static Optional<LessonAnswer> triedPleats(LessonCase one, double factor) {
        double flow = one.flow();
        double warm = one.warmest();
        return one.quantity(one.path(PLEATS))
                .flatMap(count -> withPleats(one, factor).map(other -> {
                    double now = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
                    double then = one.atFlow(other, flow, warm).elementPressureDrop();
                    return LessonAnswer.variant(
                            "tried",
                            Math.rint(count.value() * factor),
                            Shown.word(one.candidate()),
                            Numbers.count(count.value()),
                            Numbers.count(count.value() * factor),
                            Numbers.pressure(now),
                            Numbers.pressure(then),
                            Numbers.ratio(then / now));
                }));
    }

    private static Optional<LessonAnswer> bestPleats(LessonCase one) {
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
                Shown.word(one.candidate()),
                Numbers.count(pleats),
                Numbers.count(pleats * bestFactor),
                Numbers.pressure(now),
                Numbers.pressure(best),
                Numbers.ratio(now / best)));
    }

    /** A thicker medium with the same evidence. */
    static Optional<LessonAnswer> thickness(LessonCase one, double factor) {
        double flow = one.flow();
        double warm = one.warmest();
        return asThick(one, factor).map(thick -> {
            double before = one.atFlow(one.opened(), flow, warm).elementPressureDrop();
            double after = one.atFlow(thick, flow, warm).elementPressureDrop();
            boolean byAir = one.quantity(one.path("medium.airTest.pressure")).isPresent();
            return LessonAnswer.variant(
                    byAir ? "byAir" : "",
                    after / before,
                    Shown.word(one.candidate()),
                    Numbers.ratio(factor),
                    Numbers.pressure(before),
                    Numbers.pressure(after));
        });
    }
}
