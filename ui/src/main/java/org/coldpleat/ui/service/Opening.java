package org.coldpleat.ui.service;

import java.util.List;
import java.util.Optional;

/**
 * What came of opening a case file: the case, or the problems that keep it from being one.
 *
 * @param opened the case; empty if there are problems
 * @param problems problems in the order of the file
 */
public record Opening(Optional<OpenedCase> opened, List<Problem> problems) {
    public Opening {
        problems = List.copyOf(problems);
        if (opened.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("an opening has either a case or problems");
        }
    }

    static Opening of(OpenedCase opened) {
        return new Opening(Optional.of(opened), List.of());
    }

    static Opening failed(List<Problem> problems) {
        return new Opening(Optional.empty(), problems);
    }
}
