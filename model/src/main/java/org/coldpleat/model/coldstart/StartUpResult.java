package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.thermal.HeatBalance;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;

/**
 * A computed start.
 *
 * @param status how it ended
 * @param endTime until when it was computed [s]
 * @param events in order of time
 * @param fill tally while the gallery filled
 * @param connected tally from then on
 * @param fillTime when the gallery was full [s]; 0 if it never was empty, none if it never filled
 * @param closingTime when the last open bypass valve shut for good [s]; none if none opened or one stayed open
 * @param openAtEnd whether a bypass valve was open at the end
 * @param hotTime when the oil reached the stated hot temperature [s]
 * @param partPeaks greatest drop of each part of the filter [Pa], read at the steps of the integration
 * @param filterDropPeak greatest drop of the whole filter [Pa], likewise
 * @param valveRatioPeak greatest difference over opening pressure of any bypass valve [1], refined between the steps while
 *     the valve is shut and near opening; 0 without a valve
 * @param series state over time, at most {@link #MOST_POINTS} points, closest where things change fastest
 * @param balance heat balance; none with a logged temperature
 * @param evaluations circuit states asked for by the integration [1]
 */
public record StartUpResult(
        StartStatus status,
        double endTime,
        List<StartEvent> events,
        BypassTally fill,
        BypassTally connected,
        OptionalDouble fillTime,
        OptionalDouble closingTime,
        boolean openAtEnd,
        OptionalDouble hotTime,
        Map<FilterPart, Peak> partPeaks,
        Peak filterDropPeak,
        Peak valveRatioPeak,
        List<StartPoint> series,
        Optional<HeatBalance> balance,
        int evaluations) {
    /** Most points a series holds. */
    public static final int MOST_POINTS = 600;

    private static final double BALANCE_MISS = 1e-5;

    public StartUpResult {
        events = List.copyOf(events);
        partPeaks = partPeaks.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(partPeaks));
        series = List.copyOf(series);
    }

    /** Both stretches together. */
    public BypassTally total() {
        return fill.plus(connected);
    }

    /** All events of a kind. */
    public List<StartEvent> events(StartEvent.Kind kind) {
        return events.stream().filter(event -> event.kind() == kind).toList();
    }

    /** Oil temperature that few oils stand for long [K]: 130 degrees C. */
    @Source("common practice, no source")
    private static final double TOO_HOT = 403.15;

    /** What a reader of this start should know. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!status.isAnswer()) {
            notices.add(Notice.of(
                    "start.notCompleted", Severity.WARNING, "start", Shown.word(status.name()), seconds(endTime)));
            return List.copyOf(notices);
        }
        if (fill.openSeconds() > 0 && connected.openSeconds() == 0) {
            notices.add(Notice.of(
                    "start.openOnlyWhileFilling", Severity.INFO, "start", seconds(fill.openSeconds()), litres(fill)));
        }
        if (openAtEnd) {
            notices.add(Notice.of("start.stillOpen", Severity.WARNING, "start", seconds(endTime)));
        }
        if (!events(StartEvent.Kind.VALVE_TOUCHED).isEmpty()) {
            notices.add(Notice.of("start.touched", Severity.WARNING, "start"));
        }
        if (fillTime.isEmpty()) {
            notices.add(Notice.of("start.neverFilled", Severity.CAUTION, "start", seconds(endTime)));
        }
        if (hotTime.isEmpty()) {
            notices.add(Notice.of("start.notHot", Severity.INFO, "start", seconds(endTime)));
        }
        double hottest =
                series.stream().mapToDouble(StartPoint::oilTemperature).max().orElse(0);
        if (hottest > TOO_HOT) {
            notices.add(Notice.of(
                    "start.oilTooHot", Severity.CAUTION, "start", new Amount(Look.PLAIN_TEMPERATURE, hottest)));
        }
        if (balance.isPresent() && balance.get().residual() > BALANCE_MISS) {
            Amount miss = new Amount(Look.POWER_RATIO, balance.get().residual());
            notices.add(Notice.of("start.balanceOff", Severity.WARNING, "start", miss));
        }
        return List.copyOf(notices);
    }

    private static Amount seconds(double time) {
        return new Amount(Look.DURATION, time);
    }

    private static Amount litres(BypassTally tally) {
        return new Amount(Look.VOLUME, tally.unfilteredVolume());
    }
}
