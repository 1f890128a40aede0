package org.coldpleat.model.certainty;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.coldstart.StartEvent;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.StartQuantity;

/**
 * The start of one candidate.
 *
 * @param name name
 * @param hasValve true if any bypass valve acts
 * @param start computed start
 * @param bands every quantity with its 95 % band; values are NaN if the start could not be computed
 * @param parts greatest pressure drop of each part, in the order of the flow
 * @param included paths of the unknowns in the bands, those that move the open time most first
 */
public record ColdStartCandidate(
        String name,
        boolean hasValve,
        StartUpResult start,
        Map<StartQuantity, StartBand> bands,
        List<PartPeak> parts,
        List<String> included) {
    /**
     * Greatest pressure drop of a part.
     *
     * @param part key of its name
     * @param drop [Pa]
     * @param time when, on the best estimate [s]
     */
    public record PartPeak(String part, StartBand drop, double time) {}

    /**
     * State at one moment.
     *
     * @param time [s]
     * @param oilTemperature [K]
     * @param metalTemperature [K]; NaN with a logged oil temperature
     * @param elementTemperature of the oil in the filter [K]
     * @param pumpPressure [Pa]
     * @param galleryPressure [Pa]
     * @param filterDrop [Pa]
     * @param valveDifference across the leading bypass valve [Pa]
     * @param openingPressure of that valve [Pa]; infinite without a valve
     * @param mediumFlow [m3/s]
     * @param bypassFlow [m3/s]
     * @param bypassShare share of the oil round the medium [1]
     */
    public record Moment(
            double time,
            double oilTemperature,
            double metalTemperature,
            double elementTemperature,
            double pumpPressure,
            double galleryPressure,
            double filterDrop,
            double valveDifference,
            double openingPressure,
            double mediumFlow,
            double bypassFlow,
            double bypassShare) {}

    /**
     * Something that happened.
     *
     * @param time [s]
     * @param kind key of its name
     * @param which index of the phase or relief valve from 0; 0 for a bypass valve in the filter, 1 for one in the block
     * @param oilTemperature [K]
     * @param pumpPressure [Pa]
     * @param galleryPressure [Pa]
     * @param valveDifference across the leading bypass valve [Pa]
     */
    public record Event(
            double time,
            String kind,
            int which,
            double oilTemperature,
            double pumpPressure,
            double galleryPressure,
            double valveDifference) {}

    public ColdStartCandidate {
        bands = Collections.unmodifiableMap(new EnumMap<>(bands));
        parts = List.copyOf(parts);
        included = List.copyOf(included);
    }

    /** One quantity with its band. */
    public StartBand band(StartQuantity quantity) {
        return bands.get(quantity);
    }

    /** Time with a bypass valve open [s], fill stage included. */
    public StartBand openSeconds() {
        return band(StartQuantity.OPEN_SECONDS);
    }

    /** Oil round the medium [m3], fill stage included. */
    public StartBand unfilteredVolume() {
        return band(StartQuantity.UNFILTERED);
    }

    /** Whether the start was computed to its end; otherwise its numbers must not be used. */
    public boolean isComputed() {
        return start.status().isAnswer();
    }

    /** How the computation ended. */
    public String status() {
        return start.status().name();
    }

    /** Computed time [s]. */
    public double endTime() {
        return start.endTime();
    }

    /** Time until the empty passages are full [s]; 0 if there are none, NaN if they do not fill. */
    public double fillTime() {
        return start.fillTime().orElse(Double.NaN);
    }

    /** Whether a bypass valve is open at the end of the computed time. */
    public boolean openAtEnd() {
        return start.openAtEnd();
    }

    /** Share of the oil that reached the engine unfiltered [1]. */
    public double bypassShare() {
        return start.total().bypassShare();
    }

    /** Greatest difference over opening pressure of any bypass valve [1]; 0 without one. */
    public double greatestRatio() {
        return start.valveRatioPeak().value();
    }

    /** Part of the heat that the balance of the start misses [1]; NaN with a logged oil temperature. */
    public double heatResidual() {
        return start.balance().map(balance -> balance.residual()).orElse(Double.NaN);
    }

    /** The start over time, closest where things change fastest. */
    public List<Moment> moments() {
        boolean logged = start.balance().isEmpty();
        return start.series().stream().map(point -> moment(point, logged)).toList();
    }

    /** What happened, in the order of time. */
    public List<Event> events() {
        return start.events().stream().map(ColdStartCandidate::event).toList();
    }

    private static Moment moment(StartPoint point, boolean logged) {
        return new Moment(
                point.time(),
                point.oilTemperature(),
                logged ? Double.NaN : point.metalTemperature(),
                point.elementTemperature(),
                point.pumpPressure(),
                point.galleryPressure(),
                point.filterDrop(),
                point.valveDifference(),
                point.openingPressure(),
                point.mediumFlow(),
                point.bypassFlow(),
                point.bypassShare());
    }

    private static Event event(StartEvent event) {
        return new Event(
                event.time(),
                event.kind().name(),
                event.which(),
                event.oilTemperature(),
                event.pumpPressure(),
                event.galleryPressure(),
                event.valveDifference());
    }
}
