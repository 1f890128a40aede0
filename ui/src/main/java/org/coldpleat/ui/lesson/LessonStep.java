package org.coldpleat.ui.lesson;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * One step of the lesson.
 *
 * @param key of its words
 * @param turned what can be turned in it, which may depend on the case
 * @param ask what is computed with what is turned at a value; nothing if the case cannot be asked this
 * @param changed what its picture shows beside the candidate at a value: fields of the sheet and what they are multiplied
 *     with, none for the case as it is; nothing if it has no picture
 */
public record LessonStep(
        String key,
        Function<LessonCase, Turned> turned,
        BiFunction<LessonCase, Double, Optional<LessonAnswer>> ask,
        Optional<DoubleFunction<Map<String, Double>>> changed) {
    static LessonStep told(
            String key,
            Function<LessonCase, Turned> turned,
            BiFunction<LessonCase, Double, Optional<LessonAnswer>> ask) {
        return new LessonStep(key, turned, ask, Optional.empty());
    }

    static LessonStep shown(
            String key,
            Function<LessonCase, Turned> turned,
            BiFunction<LessonCase, Double, Optional<LessonAnswer>> ask,
            DoubleFunction<Map<String, Double>> changed) {
        return new LessonStep(key, turned, ask, Optional.of(changed));
    }
}
