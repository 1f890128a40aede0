package org.coldpleat.model.verdict.start;

import java.util.List;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;

/**
 * Everything {@code coldstart} finds.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param schedule name of the schedule or of the state held
 * @param phases what the engine does
 * @param from temperature of oil, metal and filter before the start [K]
 * @param ambient [K]
 * @param hot oil temperature that counts as hot [K]
 * @param logged true if a logged oil temperature stands in for the heat balance
 * @param candidates results in the order of the case
 * @param verdicts sentences
 * @param assumptions typical and guessed values of the start and of the case
 * @param notices findings, cautions last
 */
public record ColdStart(
        String title,
        boolean invented,
        String digest,
        String schedule,
        List<Phase> phases,
        double from,
        double ambient,
        double hot,
        boolean logged,
        List<ColdStartCandidate> candidates,
        List<Verdict> verdicts,
        List<Assumption> assumptions,
        List<Notice> notices) {
    /**
     * One phase of the schedule.
     *
     * @param state name of the state; empty for a plain speed
     * @param speed of the engine [rev/s]
     * @param duration [s]
     * @param heatToMetal [W]
     * @param heatToOil [W]
     */
    public record Phase(String state, double speed, double duration, double heatToMetal, double heatToOil) {}

    public ColdStart {
        phases = List.copyOf(phases);
        candidates = List.copyOf(candidates);
        verdicts = List.copyOf(verdicts);
        assumptions = List.copyOf(assumptions);
        notices = List.copyOf(notices);
    }
}
