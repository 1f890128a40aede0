package org.coldpleat.ui.lesson;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.coldpleat.ui.service.OpenedCase;

/**
 * One step of the lesson.
 *
 * @param key of its words
 * @param turned what can be turned in it, which may depend on the case
 * @param ask what is computed with what is turned at a value; nothing if the case cannot be asked this
 * @param changed the case whose candidate its picture shows beside that of the lesson at a value, which may be the case
 *     as it is; nothing if it has no picture
 */
public record LessonStep(
        String key,
        Function<LessonCase, Turned> turned,
        BiFunction<LessonCase, Double, Optional<LessonAnswer>> ask,
        Optional<BiFunction<LessonCase, Double, Optional<OpenedCase>>> changed) {
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
            BiFunction<LessonCase, Double, Optional<OpenedCase>> changed) {
        return new LessonStep(key, turned, ask, Optional.of(changed));
    }
}
