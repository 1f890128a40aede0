package org.coldpleat.model.verdict.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;

/**
 * Service life of all candidates of a case.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param horizon running time looked at [s]
 * @param winterStart start temperature whose hours are wanted [K]; NaN without starts
 * @param candidates results in the order of the case
 * @param verdicts sentences, the ranking among them
 * @param notices findings, cautions last
 */
public record ServiceResult(
        String title,
        boolean invented,
        String digest,
        double horizon,
        double winterStart,
        List<Candidate> candidates,
        List<Verdict> verdicts,
        List<Notice> notices) {
    /** How a computation ended. */
    public enum Status {
        /** Computed to the horizon. */
        HORIZON,
        /** Computed until the element resisted thirty times its clean value. */
        ELEMENT_LIMIT,
        /** Not computed: the clean element already takes more than its capacity test ended with. */
        NO_CAPACITY
    }

    /**
     * Running time until something happens, with its 95 % band.
     *
     * @param time best estimate [s]; infinite if not within the horizon
     * @param low lower end [s]
     * @param high upper end [s]
     */
    public record Event(double time, double low, double high) {
        /** True if it happens within the horizon on the best estimate. */
        public boolean happens() {
            return Double.isFinite(time);
        }
    }

    /**
     * Loading factor until the valve opens.
     *
     * @param simulated ratio of loaded to clean pack from the whole circuit [1], if it is reached below thirty
     * @param closedForm ratio for the whole filter in closed form [1], if there is one
     */
    public record Factor(OptionalDouble simulated, OptionalDouble closedForm) {}

    /**
     * One moment.
     *
     * @param time running time [s]
     * @param resistanceRatio loaded over clean pack [1]
     * @param ratioLow lower end of its 95 % band [1]; like all ends of bands not a number where that course has ended
     * @param ratioHigh upper end [1]
     * @param packResistance pressure drop of the loaded pack over viscosity and flow [1/m3]
     * @param pressureDrop of the filter, warm [Pa]
     * @param dropLow lower end of its 95 % band [Pa]
     * @param dropHigh upper end [Pa]
     * @param bypassShare share round the medium, warm [1]
     * @param openingTemperature warmest oil in which the valve is open in the state of the starts [K]; minus infinity
     *     if it never opens, NaN without a valve
     * @param openingLow at the lower end of the band of the resistance [K]
     * @param openingHigh at the upper end [K]
     * @param retained dirt in the element [kg]
     * @param concentration dirt in the oil [kg/m3]
     * @param dirtSpread upper end of the 95 % band of the dirt rate over its best estimate [1]; dirt in element and oil
     *     goes with it
     * @param cleanliness code of the oil after ISO 4406
     * @param unfilteredShare share of all oil so far that went round the medium [1]
     * @param unfilteredLow lower end of its 95 % band [1]
     * @param unfilteredHigh upper end [1]
     * @param winterUnfiltered oil that goes round the medium in one winter start, while the gallery fills included [m3];
     *     NaN without starts
     */
    public record Moment(
            double time,
            double resistanceRatio,
            double ratioLow,
            double ratioHigh,
            double packResistance,
            double pressureDrop,
            double dropLow,
            double dropHigh,
            double bypassShare,
            double openingTemperature,
            double openingLow,
            double openingHigh,
            double retained,
            double concentration,
            double dirtSpread,
            String cleanliness,
            double unfilteredShare,
            double unfilteredLow,
            double unfilteredHigh,
            double winterUnfiltered) {}

    /**
     * Service life of one candidate.
     *
     * @param name name
     * @param status how it ended
     * @param moments states in the order of time; empty if not computed
     * @param hotBypass when the valve opens while running warm; empty without a valve
     * @param winterBypass when a start at the winter temperature has the valve open once the gallery is full; empty
     *     without a valve or without starts
     * @param hotFactor loading factor, warm
     * @param coldFactor loading factor at the winter start
     * @param massClosure greatest imbalance of the dirt over the size classes [1]
     * @param startError stated error of the curves of starts, unfiltered over total volume of a start [1]
     */
    public record Candidate(
            String name,
            Status status,
            List<Moment> moments,
            Optional<Event> hotBypass,
            Optional<Event> winterBypass,
            Factor hotFactor,
            Factor coldFactor,
            double massClosure,
            double startError) {
        public Candidate {
            moments = List.copyOf(moments);
        }

        /** True if there are moments. */
        public boolean isComputed() {
            return !moments.isEmpty();
        }

        /** The last moment. */
        public Moment last() {
            return moments.get(moments.size() - 1);
        }
    }

    public ServiceResult {
        candidates = List.copyOf(candidates);
        verdicts = List.copyOf(verdicts);
        notices = List.copyOf(notices);
    }
}
