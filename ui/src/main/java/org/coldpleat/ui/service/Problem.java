package org.coldpleat.ui.service;

import java.util.Objects;
import org.coldpleat.shared.casefile.CaseProblem;

/**
 * Something in a case file that has to be put right before the case can be worked out.
 *
 * @param line line in the file, counted from 1; 0 if the problem has no line
 * @param path field path for a reader, such as {@code candidates[1] "Gray can" pleats.count}; empty for the whole file
 * @param field field path as the file has it, such as {@code candidates[1].pleats.count}; empty for the whole file
 * @param text what is wrong and what is allowed, as a sentence
 */
public record Problem(int line, String path, String field, String text) {
    public Problem {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(text, "text");
        if (line < 0) {
            throw new IllegalArgumentException("line must be at least 0, was " + line);
        }
    }

    /** A problem of a field whose path reads the same for all. */
    public Problem(int line, String path, String text) {
        this(line, path, path, text);
    }

    /** A problem that the case reader found. */
    public static Problem of(CaseProblem problem) {
        return new Problem(problem.line(), problem.place(), problem.field(), problem.sentence());
    }
}
