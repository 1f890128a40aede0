package org.coldpleat.ui.lesson;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.Shown;

/**
 * What a step found.
 *
 * @param number the number to be predicted, in kelvin where it is a difference of temperatures; none if the case says neither more nor less
 *     than words can tell, such as never
 * @param variant which of the answers of the step fits; empty for the usual one
 * @param values what is filled into question, answer and reason
 */
public record LessonAnswer(OptionalDouble number, String variant, List<Shown> values) {
    public LessonAnswer {
        values = List.copyOf(values);
    }

    static LessonAnswer of(double number, Shown... values) {
        return new LessonAnswer(OptionalDouble.of(number), "", List.of(values));
    }

    static LessonAnswer variant(String variant, double number, Shown... values) {
        return new LessonAnswer(OptionalDouble.of(number), variant, List.of(values));
    }

    static LessonAnswer told(String variant, Shown... values) {
        return new LessonAnswer(OptionalDouble.empty(), variant, List.of(values));
    }
}
