package org.coldpleat.ui.lesson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.PointResult.EnginePoint;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.ui.service.OpenedCase;

/** Questions about the filter in its place: oil, relief valve, cold, and dirt. */
final class EngineSteps {
    private static final double PERCENT = 100;
    private static final double UNMOVED = 0.5;
    private static final double COLDER_BY = 40;

    /** Viscosity of water at 20 degrees C [Pa s]. Source: from memory, 1.002 mPa s. */
    private static final double WATER = 1.002e-3;

    /** Viscosity of the oil over that of the case. */
    static final Turned VISCOSITY = Turned.times(0.3, 0.6, 1.5);

    /** Opening pressure of the relief valve over that of the case. */
    static final Turned RELIEF = Turned.times(0.85, 4.0 / 3, 2);

    /** How much colder than at the opening the oil is. */
    static final Turned BELOW = new Turned(Turned.Measure.KELVIN, 1, 10, COLDER_BY);

    /** Opening pressure of the bypass valve over that of the case. */
    static final Turned OPENING = Turned.times(0.5, 1, 2);

    private EngineSteps() {}

    /** Oil of all temperatures that the case looks at, the coldest it names first; that may lie outside. */
    static Turned oil(LessonCase one) {
        double low = Math.min(one.from(), one.coldest());
        double high = one.warmest() > low ? one.warmest() : Math.max(one.to(), low + COLDER_BY);
        return new Turned(Turned.Measure.TEMPERATURE, low, one.coldest(), high);
    }

    /**
     * Thinner oil at every temperature, on the stand. In an engine, cold, both shares of the pressure go with viscosity, and
     * a gallery told from a hot reading would be another one with another oil.
     */
    static Optional<LessonAnswer> thinner(LessonCase one, double factor) {
        return one.standState().flatMap(state -> thinner(one, state, factor));
    }

    private static Map<String, Double> viscosityTimes(LessonCase one, double factor) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (int i = 0; i < one.count("oil.points"); i++) {
            for (String kind : new String[] {"kinematic", "dynamic"}) {
                String path = "oil.points[" + i + "]." + kind;
                one.quantity(path).ifPresent(value -> factors.put(path, factor));
            }
        }
        return factors;
    }

    /** What part of the drop a test with a liquid as thin as water sees in the medium, and what part cold oil has there. */
    static Optional<LessonAnswer> water(LessonCase one, double temperature) {
        double flow = one.flow();
        PointResult warm = one.atFlow(one.opened(), flow, one.warmest());
        double factor = WATER / warm.oil().dynamicViscosity();
        Map<String, Double> factors = viscosityTimes(one, factor);
        if (factors.isEmpty()) {
            return Optional.empty();
        }
        return one.onBench(factors, flow).map(thin -> {
            PointResult water = one.atFlow(thin, flow, one.warmest());
            PointResult cold = one.atFlow(one.opened(), flow, temperature);
            return LessonAnswer.of(
                    PERCENT * cold.elementPressureDrop() / cold.pressureDrop(),
                    Shown.word(one.candidate()),
                    Numbers.flow(flow),
                    Numbers.ratio(PERCENT * water.elementPressureDrop() / water.pressureDrop()),
                    Numbers.temperature(temperature),
                    Numbers.pressure(water.pressureDrop()),
                    Numbers.pressure(cold.pressureDrop()));
        });
    }

    private static Optional<LessonAnswer> thinner(LessonCase one, String state, double factor) {
        OptionalDouble before = one.opening(one.opened(), state);
        Map<String, Double> factors = viscosityTimes(one, factor);
        if (before.isEmpty() || factors.isEmpty()) {
            return Optional.empty();
        }
        return one.scaled(factors).map(thin -> {
            OptionalDouble after = one.opening(thin, state);
            Shown was = Numbers.temperature(before.getAsDouble());
            return after.isEmpty()
                    ? LessonAnswer.told("never", Shown.word(one.candidate()), Shown.word(state), was)
                    : LessonAnswer.of(
                            before.getAsDouble() - after.getAsDouble(),
                            Shown.word(one.candidate()),
                            Shown.word(state),
                            was,
                            Numbers.temperature(after.getAsDouble()));
        });
    }

    /** How the pump's pressure is shared out, warm and cold. */
    static Optional<LessonAnswer> share(LessonCase one, double temperature) {
        return one.engineState().flatMap(state -> {
            PointResult cold = one.at(one.opened(), state, temperature);
            PointResult warm = one.at(one.opened(), state, one.warmest());
            return cold.engine()
                    .flatMap(coldEngine -> warm.engine()
                            .map(warmEngine -> LessonAnswer.of(
                                    share(cold, coldEngine),
                                    Shown.word(one.candidate()),
                                    Shown.word(state),
                                    Numbers.temperature(temperature),
                                    Numbers.temperature(one.warmest()),
                                    Numbers.ratio(share(warm, warmEngine)),
                                    Numbers.pressure(coldEngine.pumpPressure()),
                                    Numbers.pressure(cold.pressureDrop()))));
        });
    }

    private static double share(PointResult point, EnginePoint engine) {
        return PERCENT * point.pressureDrop() / engine.pumpPressure();
    }

    /** A relief valve that lets go later. */
    static Optional<LessonAnswer> relief(LessonCase one, double factor) {
        Map<String, Double> factors = new LinkedHashMap<>();
        for (int i = 0; i < one.count("engine.reliefValves"); i++) {
            factors.put("engine.reliefValves[" + i + "].openingPressure", factor);
        }
        return one.engineState().filter(state -> !factors.isEmpty()).flatMap(state -> {
            OptionalDouble before = one.opening(one.opened(), state);
            Optional<OptionalDouble> after = one.scaled(factors).map(higher -> one.opening(higher, state));
            if (before.isEmpty() || after.isEmpty()) {
                return Optional.empty();
            }
            if (after.get().isEmpty()) {
                return Optional.of(LessonAnswer.told(
                        "never",
                        Shown.word(one.candidate()),
                        Shown.word(state),
                        Numbers.temperature(before.getAsDouble())));
            }
            double moved = after.get().getAsDouble() - before.getAsDouble();
            double dumped = one.at(one.opened(), state, before.getAsDouble())
                    .engine()
                    .map(EnginePoint::reliefFlow)
                    .orElse(0.0);
            return Optional.of(LessonAnswer.variant(
                    Math.abs(moved) < UNMOVED ? "unmoved" : "",
                    moved,
                    Shown.word(one.candidate()),
                    Shown.word(state),
                    Numbers.temperature(before.getAsDouble()),
                    Numbers.temperature(after.get().getAsDouble()),
                    Numbers.flow(dumped)));
        });
    }

    /** The drop read warm, times the ratio of the viscosities, against the computed cold drop. */
    static Optional<LessonAnswer> rule(LessonCase one, double temperature) {
        return one.engineState().map(state -> {
            PointResult warm = one.at(one.opened(), state, one.warmest());
            PointResult cold = one.at(one.opened(), state, temperature);
            double ratio = cold.oil().dynamicViscosity() / warm.oil().dynamicViscosity();
            double rule = ratio * warm.pressureDrop();
            return LessonAnswer.of(
                    rule / cold.pressureDrop(),
                    Shown.word(one.candidate()),
                    Shown.word(state),
                    Numbers.temperature(one.warmest()),
                    Numbers.temperature(temperature),
                    Numbers.pressure(warm.pressureDrop()),
                    Numbers.ratio(ratio),
                    Numbers.pressure(rule),
                    Numbers.pressure(cold.pressureDrop()));
        });
    }

    /** How much goes round a valve that is open. */
    static Optional<LessonAnswer> partly(LessonCase one, double below) {
        OptionalDouble opening = one.opening(one.opened(), one.state());
        if (opening.isEmpty()) {
            return Optional.empty();
        }
        double colder = opening.getAsDouble() - below;
        if (colder < one.from()) {
            return Optional.empty();
        }
        PointResult point = one.at(one.opened(), one.state(), colder);
        double share = point.bypass().map(PointResult.Bypass::share).orElse(0.0);
        return Optional.of(LessonAnswer.of(
                PERCENT * share,
                Shown.word(one.candidate()),
                Shown.word(one.state()),
                Numbers.temperature(opening.getAsDouble()),
                Numbers.temperature(colder),
                Numbers.ratio(PERCENT * (1 - share))));
    }

    /** How many times its clean resistance the element may reach. */
    static Optional<LessonAnswer> dirt(LessonCase one, double factor) {
        Optional<OpenedCase> turned =
                factor == OPENING.base() ? Optional.of(one.opened()) : FilterSteps.withOpening(one, factor);
        return turned.flatMap(one::service).flatMap(life -> {
            ServiceResult.Factor warm = life.hotFactor();
            ServiceResult.Factor cold = life.coldFactor();
            if (warm.simulated().isEmpty()) {
                return Optional.empty();
            }
            double room = warm.simulated().getAsDouble();
            if (cold.simulated().isEmpty()) {
                return Optional.of(LessonAnswer.variant("warmOnly", room, Shown.word(one.candidate())));
            }
            double winter = cold.simulated().getAsDouble();
            return Optional.of(LessonAnswer.variant(
                    winter <= 1 ? "openClean" : "", room, Shown.word(one.candidate()), Numbers.ratio(winter)));
        });
    }
}
