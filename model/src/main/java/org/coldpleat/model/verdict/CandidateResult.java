package org.coldpleat.model.verdict;

import java.util.List;
import org.coldpleat.model.certainty.StateResult;

/**
 * All results of one candidate.
 *
 * @param name name of the candidate
 * @param sheet what its bench sheet amounts to
 * @param states one result a state, in the order of the case: flow stand first, then engine
 */
public record CandidateResult(String name, CandidateSheet sheet, List<StateResult> states) {
    public CandidateResult {
        states = List.copyOf(states);
    }
}
