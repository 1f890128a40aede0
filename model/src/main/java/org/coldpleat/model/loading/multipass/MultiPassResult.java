package org.coldpleat.model.loading.multipass;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.loading.sump.SumpState;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;

/**
 * What a virtual multi-pass test gave. The series have one entry a step, the start included.
 *
 * @param status how the test ended
 * @param series values over time
 * @param end dirt by class at the end
 * @param duration of the test [s]
 * @param injectedMass dust injected [kg]
 * @param retainedMass dust in the element at the end [kg]
 * @param pressureDrop of the element at the end [Pa]
 * @param massClosure greatest imbalance over the classes [1]
 */
public record MultiPassResult(
        Status status,
        List<Point> series,
        SumpState end,
        double duration,
        double injectedMass,
        double retainedMass,
        double pressureDrop,
        double massClosure) {
    /** How a test ended. */
    public enum Status {
        /** The terminal pressure drop was reached. */
        TERMINAL_REACHED,
        /** The time limit came first; the retained mass is no capacity. */
        TIME_LIMIT
    }

    public MultiPassResult {
        series = List.copyOf(series);
    }

    /**
     * One moment.
     *
     * @param time since the start [s]
     * @param pressureDrop of the element [Pa]
     * @param bypassShare share of the flow that leaks [1]
     * @param injectedMass [kg]
     * @param retainedMass [kg]
     * @param upstream dirt concentration before the filter, all classes [kg/m3]
     * @param downstream the same behind it [kg/m3]
     * @param upstreamCount particles at and above each asked size before the filter [1/m3], double[k]
     * @param downstreamCount the same behind it [1/m3], double[k]
     */
    public record Point(
            double time,
            double pressureDrop,
            double bypassShare,
            double injectedMass,
            double retainedMass,
            double upstream,
            double downstream,
            double[] upstreamCount,
            double[] downstreamCount) {
        /** Filtration ratio at and above one of the asked sizes [1]; NaN before any dust has come. */
        public double beta(int sizeIndex) {
            return upstreamCount[sizeIndex] / downstreamCount[sizeIndex];
        }
    }

    /** Mean count before the filter over mean count behind it during the test [1], for one of the asked sizes. */
    public double meanBeta(int sizeIndex) {
        double before = 0;
        double behind = 0;
        for (int i = 1; i < series.size(); i++) {
            Point from = series.get(i - 1);
            Point to = series.get(i);
            double step = to.time() - from.time();
            before += step * (from.upstreamCount()[sizeIndex] + to.upstreamCount()[sizeIndex]);
            behind += step * (from.downstreamCount()[sizeIndex] + to.downstreamCount()[sizeIndex]);
        }
        return before / behind;
    }

    /** Findings that go with the result. */
    public List<Notice> notices(String place) {
        List<Notice> notices = new ArrayList<>();
        if (status == Status.TIME_LIMIT) {
            notices.add(Notice.of(
                    "loading.terminalNotReached",
                    Severity.WARNING,
                    place,
                    new Amount(Look.DURATION, duration),
                    new Amount(Look.SHARP_PRESSURE, pressureDrop)));
        }
        notices.add(Notice.of("loading.dirtScatter", Severity.INFO, place));
        return List.copyOf(notices);
    }
}
