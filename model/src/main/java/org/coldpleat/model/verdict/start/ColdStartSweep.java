package org.coldpleat.model.verdict.start;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.shared.notice.Notice;

/**
 * Starts of all candidates from a range of temperatures, everything soaked through.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case and its temperature log, hexadecimal
 * @param schedule name of the schedule or of the state held
 * @param phases what the engine does
 * @param hot oil temperature that counts as hot [K]
 * @param candidates one sweep each, in the order of the case
 * @param assumptions typical and guessed values of the start and of the case
 * @param notices findings, cautions last
 */
public record ColdStartSweep(
        String title,
        boolean invented,
        String digest,
        String schedule,
        List<ColdStart.Phase> phases,
        double hot,
        List<Candidate> candidates,
        List<Assumption> assumptions,
        List<Notice> notices) {
    /**
     * The sweep of one candidate.
     *
     * @param name name
     * @param hasValve true if any bypass valve acts
     * @param rows by rising start temperature
     */
    public record Candidate(String name, boolean hasValve, List<Row> rows) {
        public Candidate {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One start.
     *
     * @param from temperature of oil, metal, filter and air before the start [K]
     * @param status how its computation ended
     * @param computed true if it came to its end; otherwise its numbers must not be used
     * @param openFilling time with a bypass valve open while the empty passages fill [s]
     * @param openAfter time with a bypass valve open from then on [s]
     * @param unfilteredFilling oil round the medium while the empty passages fill [m3]
     * @param unfilteredAfter oil round the medium from then on [m3]
     * @param greatestRatio greatest difference over opening pressure [1]; 0 without a valve
     * @param bands what the unknowns make of it, where that was asked for
     */
    public record Row(
            double from,
            String status,
            boolean computed,
            double openFilling,
            double openAfter,
            double unfilteredFilling,
            double unfilteredAfter,
            double greatestRatio,
            Optional<Bands> bands) {
        /** Time with a bypass valve open [s], fill stage included. */
        public double openSeconds() {
            return openFilling + openAfter;
        }

        /** Oil round the medium [m3], fill stage included. */
        public double unfiltered() {
            return unfilteredFilling + unfilteredAfter;
        }
    }

    /**
     * Bands of one start.
     *
     * @param openSeconds time with a bypass valve open [s], fill stage included
     * @param unfiltered oil round the medium [m3], fill stage included
     */
    public record Bands(StartBand openSeconds, StartBand unfiltered) {}

    /** True if its starts have bands. */
    public boolean isBanded() {
        return candidates.stream()
                .flatMap(one -> one.rows().stream())
                .anyMatch(row -> row.bands().isPresent());
    }

    public ColdStartSweep {
        phases = List.copyOf(phases);
        candidates = List.copyOf(candidates);
        assumptions = List.copyOf(assumptions);
        notices = List.copyOf(notices);
    }
}
