package org.coldpleat.ui.desktop.viewmodel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.coldpleat.model.change.AreaBy;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;

/** Finds what can be tried on a candidate of a case. */
final class Knobs {
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;

    /** Least area that the oil passes, over that of the case [1]. */
    private static final double LEAST_PASSED = 0.1;

    /** Where the slider of hours ends if the case looks no further ahead [s]. */
    private static final double HORIZON = 1000 * 3600.0;

    private final OpenedCase opened;
    private final Map<String, Measured> known;
    private final Map<String, Knob> knobs = new LinkedHashMap<>();

    private Knobs(OpenedCase opened) {
        this.opened = opened;
        known = opened.understood();
    }

    /**
     * The knobs of a candidate by their keys.
     *
     * @param sheet path of the candidate
     * @param present what it is as it stands
     * @param state name of the state that is looked at
     */
    static Map<String, Knob> of(OpenedCase opened, String sheet, Present present, String state) {
        Knobs found = new Knobs(opened);
        present.openingPressure()
                .ifPresent(pressure -> found.add(
                        "opening", Kind.PRESSURE_DIFFERENCE, pressure, LEAST, true, CandidateChange::timesOpening));
        found.area(present);
        found.read(sheet + ".medium.thickness")
                .ifPresent(thick -> found.add(
                        "thickness", Kind.LENGTH, thick.value(), LEAST, true, CandidateChange::timesThickness));
        found.drive(state);
        found.hours();
        return found.knobs;
    }

    private Optional<Measured> read(String path) {
        return Optional.ofNullable(known.get(path));
    }

    private void add(
            String key,
            Kind kind,
            double base,
            double least,
            boolean kept,
            BiFunction<CandidateChange, Double, CandidateChange> turn) {
        knobs.put(key, new Knob(key, kind, base, least * base, MOST * base, kept, turn));
    }

    /** The strip as it is unfolded, by taller pleats: what caps and glue hide of it stays. */
    private void area(Present present) {
        double free = present.freeShare();
        add(
                "area",
                Kind.AREA,
                present.grossArea(),
                Math.max(LEAST, 1 - (1 - LEAST_PASSED) * free),
                true,
                (change, gross) -> change.timesArea(AreaBy.TALLER_PLEATS, 1 + (gross - 1) / free));
    }

    /** Speed of the engine, or flow of the stand, in the state that is looked at. */
    private void drive(String state) {
        drive("speed", "engine", "speed", state);
        drive("flow", "flowStand", "flow", state);
    }

    private void drive(String key, String at, String field, String state) {
        List<Section> states = opened.document().root().section(at).stream()
                .flatMap(section -> section.sections("states").stream())
                .toList();
        Stream.iterate(0, i -> i + 1)
                .limit(states.size())
                .filter(i -> states.get(i).text("name").orElse("").equals(state))
                .findFirst()
                .map(i -> at + ".states[" + i + "]." + field)
                .ifPresent(path -> read(path)
                        .ifPresent(value -> add(
                                key,
                                value.kind(),
                                value.value(),
                                LEAST,
                                false,
                                (change, factor) -> change.withDrive(state, factor))));
    }

    private void hours() {
        opened.document().root().section("duty").ifPresent(duty -> {
            double end = duty.quantity("horizon").map(Measured::value).orElse(HORIZON);
            knobs.put(
                    WhatIf.HOURS, new Knob(WhatIf.HOURS, Kind.DURATION, 0, 0, end, false, (change, factor) -> change));
        });
    }
}
