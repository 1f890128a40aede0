package org.coldpleat.model.verdict;

import java.util.List;
import org.coldpleat.shared.quantity.Shown;

/**
 * One sentence of the verdict as code and values; the words live in the bundle {@code verdicts.properties}.
 *
 * @param code key of the sentence
 * @param setting {@code engine}, {@code flowStand} or empty
 * @param state state it speaks of, or empty
 * @param candidates candidates it speaks of, in the order of the sentence
 * @param values further words and amounts for the placeholders
 */
public record Verdict(String code, String setting, String state, List<String> candidates, List<Shown> values) {
    public Verdict {
        candidates = List.copyOf(candidates);
        values = List.copyOf(values);
    }
}
