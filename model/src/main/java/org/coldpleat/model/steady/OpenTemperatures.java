package org.coldpleat.model.steady;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Require;

/**
 * All temperatures at which a bypass valve is open.
 *
 * @param kind what sort of answer it is
 * @param intervals open intervals from cold to warm
 * @param domainLow lowest temperature looked at [K]
 * @param domainHigh highest temperature looked at [K]
 * @param greatestRatio greatest difference over opening pressure found [1]
 * @param greatestAt where that is [K]
 * @param evaluations operating points computed [1]
 * @param unresolved operating points without an answer [1]
 */
public record OpenTemperatures(
        Kind kind,
        List<Interval> intervals,
        double domainLow,
        double domainHigh,
        double greatestRatio,
        double greatestAt,
        int evaluations,
        int unresolved) {
    /** Ratio this close to 1 [1] is called barely shut or barely open. */
    private static final double BARELY = 0.05;

    /** Sort of answer. */
    public enum Kind {
        /** Shut over the whole domain. */
        NEVER,
        /** Open over the whole domain. */
        ALWAYS,
        /** Open below one temperature, shut above. */
        BELOW,
        /** Any other pattern: open in one or more intervals. */
        INTERVALS,
        /** Not one operating point was found. */
        UNKNOWN
    }

    /**
     * Temperatures from low to high [K] at which the valve is open.
     *
     * @param low [K]
     * @param high [K], at least low
     */
    public record Interval(double low, double high) {
        public Interval {
            Require.notNegative("high minus low", high - low, "K");
        }

        /** Width [K]. */
        public double width() {
            return high - low;
        }
    }

    public OpenTemperatures {
        intervals = List.copyOf(intervals);
    }

    /** Whether the valve is open at a temperature [K] of the domain. */
    public boolean isOpenAt(double temperature) {
        return intervals.stream().anyMatch(i -> temperature >= i.low() && temperature <= i.high());
    }

    /** Warmest temperature at which the valve is open [K]; minus infinity if never. */
    public double warmestOpen() {
        return intervals.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : intervals.get(intervals.size() - 1).high();
    }

    /** What a reader of this answer should know. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (unresolved > 0) {
            notices.add(Notice.of(
                    "coldstart.unresolved",
                    Severity.WARNING,
                    "circuit",
                    Integer.toString(unresolved),
                    Integer.toString(evaluations)));
        }
        Amount reached = new Amount(Look.TENTH_PERCENT, greatestRatio);
        if (kind == Kind.NEVER && greatestRatio > 1 - BARELY) {
            Amount place = new Amount(Look.PLAIN_TEMPERATURE, greatestAt);
            notices.add(Notice.of("coldstart.barelyShut", Severity.WARNING, "filter", place, reached));
        } else if (!intervals.isEmpty() && greatestRatio < 1 + BARELY) {
            notices.add(Notice.of("coldstart.barelyOpen", Severity.WARNING, "filter", reached));
        }
        return List.copyOf(notices);
    }
}
