package org.coldpleat.ui.desktop.viewmodel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;
import org.coldpleat.ui.service.SheetTests;

/**
 * Finds what can be tried on a candidate of a case. Tests of the filter as it was say what its valve and its medium are;
 * with another opening pressure, area or thickness they would be tests of another filter. So what came of them is written
 * down in their place: the opening pressure that is set, and the resistance of the medium.
 */
final class Knobs {
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;

    /** Where the slider of hours ends if the case looks no further ahead [s]. */
    private static final double HORIZON = 1000 * 3600.0;

    private final OpenedCase opened;
    private final Map<String, Measured> known;
    private final String sheet;
    private final Present present;
    private final Optional<Section> written;
    private final Map<String, Knob> knobs = new LinkedHashMap<>();

    private Knobs(OpenedCase opened, String sheet, Present present) {
        this.opened = opened;
        this.sheet = sheet;
        this.present = present;
        known = opened.understood();
        written = opened.document().stream()
                .flatMap(document -> document.root().sections("candidates").stream())
                .filter(candidate -> candidate.path().equals(sheet))
                .findFirst();
    }

    /**
     * The knobs of a candidate by their keys.
     *
     * @param sheet path of the candidate
     * @param present what it is as it stands
     * @param state name of the state that is looked at
     */
    static Map<String, Knob> of(OpenedCase opened, String sheet, Present present, String state) {
        Knobs found = new Knobs(opened, sheet, present);
        found.opening();
        found.area();
        found.thickness();
        found.drive(state);
        found.hours();
        return found.knobs;
    }

    private Optional<Measured> read(String path) {
        return Optional.ofNullable(known.get(path));
    }

    private void add(String key, Kind kind, double base, List<Knob.Field> fields, List<String> voided, boolean kept) {
        knobs.put(key, new Knob(key, kind, base, LEAST * base, MOST * base, fields, there(voided), kept));
    }

    /** Those of the tests that stand on the sheet. */
    private List<String> there(List<String> tests) {
        return written.map(one -> SheetTests.on(one, tests)).orElse(List.of());
    }

    private void opening() {
        present.openingPressure().ifPresent(pressure -> {
            List<Knob.Field> fields = new ArrayList<>();
            fields.add(field(".bypass.openingPressure", Kind.PRESSURE_DIFFERENCE, pressure));
            read(sheet + ".bypass.closingPressure")
                    .ifPresent(closing ->
                            fields.add(field(".bypass.closingPressure", Kind.PRESSURE_DIFFERENCE, closing.value())));
            add("opening", Kind.PRESSURE_DIFFERENCE, pressure, fields, SheetTests.OF_VALVE, true);
        });
    }

    private Knob.Field field(String path, Kind kind, double growing) {
        return new Knob.Field(sheet + path, kind, growing, 0);
    }

    /** Every field that says how much medium there is grows with it; the medium stays what it is. */
    private void area() {
        List<Knob.Field> fields = new ArrayList<>();
        read(sheet + ".medium.statedArea")
                .ifPresent(area -> fields.add(field(".medium.statedArea", Kind.AREA, area.value())));
        Optional<Measured> depth = read(sheet + ".pleats.depth");
        depth.ifPresent(deep -> fields.add(field(".pleats.depth", Kind.LENGTH, deep.value())));
        read(sheet + ".medium.strip.length").ifPresent(length -> {
            double allowance = allowances();
            fields.add(new Knob.Field(
                    sheet + ".medium.strip.length", Kind.LENGTH, length.value() + allowance, -allowance));
        });
        if (!fields.isEmpty()) {
            fields.add(new Knob.Field(
                    sheet + ".medium.resistance", Kind.MEDIUM_RESISTANCE, 0, present.mediumResistance()));
            add("area", Kind.AREA, present.grossArea(), fields, SheetTests.OF_MEDIUM, true);
        }
    }

    /** What is added to the length of the strip, below 0 if taken off [m]. */
    private double allowances() {
        return written.flatMap(candidate -> candidate.section("medium")).stream()
                .flatMap(medium -> medium.section("strip").stream())
                .flatMap(strip -> strip.sections("allowances").stream())
                .filter(one -> one.choice("on").orElse("").equals("length"))
                .mapToDouble(one -> one.quantity("by").map(Measured::value).orElse(0.0))
                .sum();
    }

    /** More of the same medium on its way through: resistance and weight go with the thickness, permeability stays. */
    private void thickness() {
        read(sheet + ".medium.thickness").map(Measured::value).ifPresent(thick -> {
            List<Knob.Field> fields = new ArrayList<>();
            fields.add(field(".medium.thickness", Kind.LENGTH, thick));
            fields.add(field(".medium.resistance", Kind.MEDIUM_RESISTANCE, present.mediumResistance()));
            for (String weight : List.of(".medium.basisWeight", ".medium.sample.mass")) {
                read(sheet + weight).ifPresent(value -> fields.add(field(weight, value.kind(), value.value())));
            }
            add("thickness", Kind.LENGTH, thick, fields, SheetTests.OF_MEDIUM, true);
        });
    }

    /** Speed of the engine, or flow of the stand, in the state that is looked at. */
    private void drive(String state) {
        drive("speed", "engine", "speed", state);
        drive("flow", "flowStand", "flow", state);
    }

    private void drive(String key, String at, String field, String state) {
        List<Section> states = opened.document().stream()
                .flatMap(document -> document.root().section(at).stream())
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
                                List.of(new Knob.Field(path, value.kind(), value.value(), 0)),
                                List.of(),
                                false)));
    }

    private void hours() {
        opened.document().flatMap(document -> document.root().section("duty")).ifPresent(duty -> {
            double end = duty.quantity("horizon").map(Measured::value).orElse(HORIZON);
            knobs.put(WhatIf.HOURS, new Knob(WhatIf.HOURS, Kind.DURATION, 0, 0, end, List.of(), List.of(), false));
        });
    }
}
