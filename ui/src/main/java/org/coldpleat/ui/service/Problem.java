package org.coldpleat.ui.service;

import java.util.Objects;
import org.coldpleat.shared.casefile.CaseProblem;

/**
 * Something in a case file that has to be put right before the case can be worked out.
 *
 * @param line line in the file, counted from 1; 0 if the problem has no line
 * @param path field path, such as {@code candidates[1].pleats.count}; empty for the whole file
 * @param text what is wrong and what is allowed, as a sentence
 */
public record Problem(int line, String path, String text) {
    public Problem {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(text, "text");
        if (line < 0) {
            throw new IllegalArgumentException("line must be at least 0, was " + line);
        }
    }

    static Problem of(CaseProblem problem) {
        return new Problem(problem.line(), problem.place(), problem.sentence());
    }
}
