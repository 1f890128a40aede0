package org.coldpleat.shared.casefile;

import java.util.List;
import java.util.Optional;

/**
 * Outcome of reading a case file.
 *
 * @param document the document, present only if there are no problems
 * @param problems all problems found, in file order
 */
public record CaseReading(Optional<CaseDocument> document, List<CaseProblem> problems) {
    public CaseReading {
        problems = List.copyOf(problems);
        if (document.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a document stands exactly where there are no problems");
        }
    }

    static CaseReading of(CaseDocument document) {
        return new CaseReading(Optional.of(document), List.of());
    }

    static CaseReading of(FileProblems problems) {
        return new CaseReading(Optional.empty(), problems.inFileOrder());
    }
}
