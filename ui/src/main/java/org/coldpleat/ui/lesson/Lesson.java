package org.coldpleat.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.shared.notice.Wording;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;

/** The steps of the lesson in their order, and their words. */
public final class Lesson {
    /** All steps. */
    public static final List<LessonStep> STEPS = List.of(
            LessonStep.shown("area", one -> FilterSteps.AREA, FilterSteps::area, FilterSteps::withPleats),
            LessonStep.told("standAndEngine", one -> FilterSteps.STAND_FLOW, FilterSteps::standAndEngine),
            LessonStep.shown("share", EngineSteps::oil, EngineSteps::share, (one, value) -> Optional.of(one.opened())),
            LessonStep.told("rule", EngineSteps::oil, EngineSteps::rule),
            LessonStep.told("water", EngineSteps::oil, EngineSteps::water),
            LessonStep.told("thinner", one -> EngineSteps.VISCOSITY, EngineSteps::thinner),
            LessonStep.shown("setting", one -> FilterSteps.SETTING, FilterSteps::setting, FilterSteps::withOpening),
            LessonStep.told("relief", one -> EngineSteps.RELIEF, EngineSteps::relief),
            LessonStep.told("partly", one -> EngineSteps.BELOW, EngineSteps::partly),
            LessonStep.shown("thickness", one -> FilterSteps.THICK, FilterSteps::thickness, FilterSteps::asThick),
            LessonStep.shown("pleats", one -> FilterSteps.PLEAT_COUNT, FilterSteps::pleats, FilterSteps::shownPleats),
            LessonStep.told("dirt", one -> EngineSteps.OPENING, EngineSteps::dirt));

    /** A prediction within this share of the computed number counts as right [1]. */
    private static final double NEAR = 0.2;

    private static final Wording WORDS = Wording.beside(Lesson.class, "lesson");

    private Lesson() {}

    /**
     * A step in words.
     *
     * @param title what it is about
     * @param question what to predict
     * @param unit unit of the prediction, empty for a plain ratio or count
     * @param number to be predicted [unit]; none if words alone can tell
     * @param answer what was computed
     * @param reason why, in one sentence
     * @param equation behind it
     */
    public record Told(
            String title,
            String question,
            String unit,
            OptionalDouble number,
            String answer,
            String reason,
            String equation) {}

    /** Asks the case a step; nothing if it cannot be asked. */
    public static Optional<LessonAnswer> ask(LessonStep step, LessonCase one) {
        return ask(step, one, step.turned().apply(one).base());
    }

    /**
     * Asks the case a step with what can be turned in it at another value.
     *
     * @param value within what can be turned
     * @throws IllegalArgumentException if it is not
     */
    public static Optional<LessonAnswer> ask(LessonStep step, LessonCase one, double value) {
        if (!step.turned().apply(one).holds(value)) {
            throw new IllegalArgumentException(
                    "value must lie within " + step.turned().apply(one) + ", was " + value);
        }
        return step.ask().apply(one, value);
    }

    /** What can be turned in a step, at a value, in words. */
    public static String turned(LessonStep step, Turned turned, double value, UnitSystem units) {
        return WORDS.text(step.key() + ".turned", List.of(amount(turned, value, units)));
    }

    /** A value of what can be turned, with its unit. */
    public static String amount(Turned turned, double value, UnitSystem units) {
        return switch (turned.measure()) {
            case TIMES -> WORDS.text("measure.times", List.of(Numbers.fine(value)));
            case TEMPERATURE -> Numbers.temperature(value).text(units);
            case KELVIN -> Amount.difference(value).text(units);
        };
    }

    /** Name of a step, whatever the case. */
    public static String title(LessonStep step) {
        return WORDS.pattern(step.key() + ".title");
    }

    /** A step and what was found, in words and units of a family. */
    public static Told told(LessonStep step, LessonAnswer found, UnitSystem units) {
        String answer = step.key() + ".answer" + (found.variant().isEmpty() ? "" : "." + found.variant());
        String written = WORDS.patternOr(step.key() + ".unit", "");
        Unit kelvins = units.unit(Kind.TEMPERATURE_DIFFERENCE);
        boolean difference = written.equals(Kind.TEMPERATURE_DIFFERENCE.siUnit());
        String unit = difference ? kelvins.symbol() : written;
        OptionalDouble number = found.number().isPresent() && difference
                ? OptionalDouble.of(kelvins.differenceFromSi(found.number().getAsDouble()))
                : found.number();
        List<String> asked = new ArrayList<>(Shown.texts(found.values(), units));
        asked.add(0, unit);
        List<String> values = new ArrayList<>(asked);
        values.set(0, number.isPresent() ? (Numbers.plain(number.getAsDouble()) + " " + unit).strip() : "");
        return new Told(
                title(step),
                WORDS.text(step.key() + ".question", asked),
                unit,
                number,
                WORDS.text(answer, values),
                WORDS.text(step.key() + ".reason", values),
                WORDS.pattern(step.key() + ".equation"));
    }

    /**
     * The candidate, and beside it what the step changes, in the state of the lesson.
     *
     * @return nothing if the step has no picture or the case does not stand with the change
     */
    public static Optional<QuickCurves> picture(LessonStep step, LessonCase one) {
        return picture(step, one, step.turned().apply(one).base());
    }

    /** The same with what can be turned in the step at another value. */
    public static Optional<QuickCurves> picture(LessonStep step, LessonCase one, double value) {
        String name = WORDS.patternOr(step.key() + ".changed", "");
        return step.changed().flatMap(changed -> changed.apply(one, value)).map(other -> one.glanceBeside(other, name));
    }

    /** What was typed as a prediction, with a point or a comma; nothing if it is no number. */
    public static OptionalDouble prediction(String typed) {
        try {
            return OptionalDouble.of(Double.parseDouble(typed.strip().replace(',', '.')));
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }

    /** How a prediction compares with what was computed. */
    public static String verdict(double guess, Told told) {
        double computed = told.number().orElseThrow();
        double off = Math.abs(guess - computed);
        boolean near = off <= NEAR * Math.abs(computed);
        return WORDS.text(
                near ? "guess.near" : guess > computed ? "guess.high" : "guess.low",
                List.of(Numbers.plain(guess), Numbers.plain(computed)));
    }

    /** That a case cannot be asked a step. */
    public static String notHere(LessonStep step) {
        return WORDS.text("notHere", List.of(title(step)));
    }

    /** The caution that stands below every lesson. */
    public static String caution() {
        return WORDS.pattern("caution");
    }
}
