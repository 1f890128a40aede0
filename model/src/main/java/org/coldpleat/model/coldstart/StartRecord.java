package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.coldpleat.model.filter.FilterPart;

/** What is kept of a start: its events, its points in time and its highest values. Work object of one run. */
final class StartRecord {
    private final StartEquations plant;
    private final List<StartSwitch.Bypass> valves;
    private final StartSeries series;
    private final List<StartEvent> events = new ArrayList<>();
    private final Map<FilterPart, Peak> partPeaks = new EnumMap<>(FilterPart.class);
    private Peak dropPeak = new Peak(0, 0);
    private Peak ratioPeak = new Peak(0, 0);

    StartRecord(StartEquations plant, List<StartSwitch.Bypass> valves) {
        this.plant = plant;
        this.valves = valves;
        series = new StartSeries(plant, valves);
    }

    /** Takes a moment into points and highest values; one to keep survives the thinning of the points. */
    void add(StartRun.Sample sample, boolean keep) {
        series.add(sample, keep);
        StartHydraulics.Moment moment = sample.moment();
        double at = sample.time();
        for (Map.Entry<FilterPart, Double> drop : moment.filter().partDrops().entrySet()) {
            Peak peak = partPeaks.get(drop.getKey());
            if (peak == null || drop.getValue() > peak.value()) {
                partPeaks.put(drop.getKey(), new Peak(drop.getValue(), at));
            }
        }
        dropPeak = dropPeak.or(moment.totalDrop(), at);
        for (StartSwitch.Bypass valve : valves) {
            ratio(valve.ratio(moment), at);
        }
    }

    /** Keeps a moment as a point only. */
    void keep(StartRun.Sample sample) {
        series.add(sample, true);
    }

    /** Difference across a valve over its opening pressure [1] that was seen at a time [s]. */
    void ratio(double ratio, double time) {
        ratioPeak = ratioPeak.or(ratio, time);
    }

    void event(StartEvent.Kind kind, int which, StartRun.Sample sample) {
        StartHydraulics.Moment moment = sample.moment();
        events.add(new StartEvent(
                sample.time(),
                kind,
                which,
                plant.oil(sample.time(), sample.state()),
                moment.point().pumpPressure(),
                moment.point().galleryPressure(),
                series.leading(moment).difference()));
    }

    /** Time of the last event of a kind [s]; none if there was none. */
    OptionalDouble last(StartEvent.Kind kind) {
        return events.stream()
                .filter(event -> event.kind() == kind)
                .mapToDouble(StartEvent::time)
                .reduce((first, second) -> second);
    }

    List<StartEvent> events() {
        return events;
    }

    Map<FilterPart, Peak> partPeaks() {
        return partPeaks;
    }

    Peak dropPeak() {
        return dropPeak;
    }

    Peak ratioPeak() {
        return ratioPeak;
    }

    List<StartPoint> points() {
        return series.thinned();
    }
}
