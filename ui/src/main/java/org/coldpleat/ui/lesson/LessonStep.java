package org.coldpleat.ui.lesson;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One step of the lesson.
 *
 * @param key of its words
 * @param ask what is computed; nothing if the case cannot be asked this
 * @param changed what its picture shows beside the candidate: fields of the sheet and what they are multiplied with, none
 *     for the case as it is; nothing if it has no picture
 */
public record LessonStep(
        String key, Function<LessonCase, Optional<LessonAnswer>> ask, Optional<Map<String, Double>> changed) {
    public LessonStep {
        changed = changed.map(Map::copyOf);
    }

    static LessonStep told(String key, Function<LessonCase, Optional<LessonAnswer>> ask) {
        return new LessonStep(key, ask, Optional.empty());
    }

    static LessonStep shown(String key, Function<LessonCase, Optional<LessonAnswer>> ask, Map<String, Double> changed) {
        return new LessonStep(key, ask, Optional.of(changed));
    }
}
