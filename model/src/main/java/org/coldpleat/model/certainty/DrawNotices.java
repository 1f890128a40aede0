package org.coldpleat.model.certainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

/** Says when so many draws had to be left out that the bands may be off, and when the quick search missed something. */
final class DrawNotices {
    /** Share of the draws left out that may shift an end of a 95 % band noticeably: a tenth of what lies outside it. */
    private static final double MANY = 0.005;

    private DrawNotices() {}

    static List<Notice> of(
            List<ConfidenceResult.StateOutcome> outcomes, int draws, ConfidenceResult.Verified verified) {
        List<Notice> notices = new ArrayList<>();
        Map<String, Integer> impossible = new LinkedHashMap<>();
        outcomes.forEach(one -> impossible.put(one.candidate(), one.impossible()));
        impossible.forEach((candidate, count) -> {
            if (count > MANY * draws) {
                notices.add(
                        Notice.of("confidence.impossibleDraws", Severity.WARNING, candidate, percent(count, draws)));
            }
        });
        for (ConfidenceResult.StateOutcome one : outcomes) {
            if (one.unanswered() > MANY * draws) {
                notices.add(Notice.of(
                        "confidence.unansweredDraws",
                        Severity.WARNING,
                        one.candidate(),
                        Shown.word(one.state()),
                        percent(one.unanswered(), draws)));
            }
        }
        if (verified.differing() > 0) {
            notices.add(Notice.of(
                    "confidence.searchDiffers",
                    Severity.WARNING,
                    "",
                    Integer.toString(verified.differing()),
                    Integer.toString(verified.compared())));
        }
        return notices;
    }

    private static Amount percent(int count, int draws) {
        return new Amount(Look.TENTH_PERCENT, (double) count / draws);
    }
}
