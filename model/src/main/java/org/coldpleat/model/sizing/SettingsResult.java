package org.coldpleat.model.sizing;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;

/**
 * What {@code settings} finds: each candidate with its bypass valve set to one opening pressure after another.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param start the start that the rows tell of; empty if the case has none
 * @param states names of the states, in the order of the openings of a row
 * @param candidates results in the order of the case
 * @param verdicts sentences
 * @param assumptions typical and guessed values behind the result
 * @param notices findings, cautions last
 */
public record SettingsResult(
        String title,
        boolean invented,
        String digest,
        Optional<Start> start,
        List<String> states,
        List<Candidate> candidates,
        List<Verdict> verdicts,
        List<Assumption> assumptions,
        List<Notice> notices) {
    public SettingsResult {
        states = List.copyOf(states);
        candidates = List.copyOf(candidates);
        verdicts = List.copyOf(verdicts);
        assumptions = List.copyOf(assumptions);
        notices = List.copyOf(notices);
    }

    /** True if every start and every opening of every candidate was found. */
    public boolean isAnswered() {
        return candidates.stream()
                .flatMap(one -> one.rows().stream())
                .allMatch(row -> row.openings().stream().noneMatch(opening -> Double.isNaN(opening.value()))
                        && row.afterStart().map(AfterStart::completed).orElse(true));
    }

    /**
     * A start.
     *
     * @param schedule name of the schedule
     * @param from temperature of oil, metal and filter before it [K]
     */
    public record Start(String schedule, double from) {}

    /**
     * One candidate.
     *
     * @param name name
     * @param measured opening pressure as measured [Pa]; NaN without a valve
     * @param inBlock true if the valve that is set is the one in the engine block
     * @param rows by rising setting, the one as measured among them; a single one without a valve
     */
    public record Candidate(String name, double measured, boolean inBlock, List<Row> rows) {
        public Candidate {
            rows = List.copyOf(rows);
        }

        /** True if there is a valve to be set. */
        public boolean hasValve() {
            return !Double.isNaN(measured);
        }

        /** The row as measured. */
        public Row now() {
            return rows.stream().filter(Row::measured).findFirst().orElseThrow();
        }
    }

    /**
     * One setting.
     *
     * @param setting opening pressure [Pa]; NaN without a valve
     * @param measured true if it is the one as measured
     * @param openings warmest oil in which the valve is open, with its 95 % band, by state [K]; negative infinity if never,
     *     positive infinity if always, NaN without an answer
     * @param afterStart what the stated start brings; empty without a start
     * @param overRange greatest pressure on the medium over all states and the whole range of oil
     */
    public record Row(
            double setting,
            boolean measured,
            List<OpeningBand> openings,
            Optional<AfterStart> afterStart,
            ElementPeak overRange) {
        public Row {
            openings = List.copyOf(openings);
        }

        /** Greatest pressure on the medium over the start and over the range [Pa]. */
        public double elementPeak() {
            double start = afterStart.map(AfterStart::elementPeak).orElse(Double.NaN);
            return start > overRange.pressure() ? start : overRange.pressure();
        }
    }

    /**
     * After the stated start.
     *
     * @param completed false if the start was not computed to its end; the numbers must not be used then
     * @param bypassShare share of the oil to the engine that went round the medium [1]
     * @param openSeconds time with the valve open [s]
     * @param unfilteredVolume oil round the medium [m3]
     * @param elementPeak greatest pressure on the medium [Pa]
     */
    public record AfterStart(
            boolean completed, double bypassShare, double openSeconds, double unfilteredVolume, double elementPeak) {}
}
