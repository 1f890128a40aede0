package org.coldpleat.model.verdict;

import java.util.List;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.shared.notice.Notice;

/**
 * Everything {@code compare} finds.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param from coldest oil temperature looked at [K]
 * @param to warmest [K]
 * @param named the named temperatures
 * @param candidates results in the order of the case
 * @param verdicts sentences
 * @param assumptions typical, guessed and default values the verdict rests on
 * @param notices findings, cautions last
 */
public record Comparison(
        String title,
        boolean invented,
        String digest,
        double from,
        double to,
        List<NamedTemperature> named,
        List<CandidateResult> candidates,
        List<Verdict> verdicts,
        List<Assumption> assumptions,
        List<Notice> notices) {
    public Comparison {
        named = List.copyOf(named);
        candidates = List.copyOf(candidates);
        verdicts = List.copyOf(verdicts);
        assumptions = List.copyOf(assumptions);
        notices = List.copyOf(notices);
    }
}
