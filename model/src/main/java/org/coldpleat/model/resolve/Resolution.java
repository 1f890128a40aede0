package org.coldpleat.model.resolve;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.CaseProblem;

/**
 * Outcome of turning a document into computing form.
 *
 * @param resolved the case, present exactly if there are no problems
 * @param problems what stands in the way, with place and remedy
 */
public record Resolution(Optional<ResolvedCase> resolved, List<CaseProblem> problems) {
    public Resolution {
        problems = List.copyOf(problems);
    }
}
