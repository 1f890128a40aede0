package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.valve.FlapValve;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Makes everything of a filter but its pleat pack from a bench sheet. */
final class FilterBuilder {
    /** Leak of a shut flap, flow times viscosity over pressure [m3]. */
    @Source("US federal specification F-F-351F: 10 mL/h at 5.1 kPa and about 4 mPa s")
    private static final double FLAP_LEAK = 2.2e-15;

    @Source("rubber is nearly incompressible; textbook value")
    private static final double RUBBER_POISSON = 0.49;

    private final Section sheet;
    private final Inputs inputs;
    private final BenchEvidence bench;
    private final List<FilterPart> leftOut = new ArrayList<>();

    FilterBuilder(Section sheet, Inputs inputs, BenchEvidence bench) {
        this.bench = bench;
        this.sheet = sheet;
        this.inputs = inputs;
    }

    /** Parts the sheet says too little about; their drop is not counted. */
    List<FilterPart> leftOut() {
        return List.copyOf(leftOut);
    }

    /** The filter around a pack of a resistance [1/m3], with the bypass valve inside it if it has one. */
    FilterAssembly build(double packResistance) {
        Optional<Section> bypass = sheet.section("bypass");
        String position = bypass.flatMap(section -> section.choice("position")).orElse("none");
        BypassLocation location = switch (position) {
            case "base" -> BypassLocation.BASE;
            case "dome" -> BypassLocation.DOME;
            default -> BypassLocation.NONE;
        };
        Optional<SpringValve> valve = location == BypassLocation.NONE
                ? Optional.empty()
                : ValveBuilder.valve(
                        bypass.orElseThrow(), inputs, inputs.constant("valve.flowForceFactor"), bench.scale());
        return new FilterAssembly(
                inletHoles(),
                flap(),
                annulus(),
                packResistance,
                tubeOpenings(),
                centerTube(),
                outletBore(),
                valve,
                valve.isPresent() ? location : BypassLocation.NONE,
                Optional.empty());
    }

    private PressureDropLaw inletHoles() {
        Optional<Section> plate = sheet.section("basePlate");
        Optional<Section> holes = plate.flatMap(section -> section.section("inletHoles"));
        if (holes.isEmpty() || !holes.get().has("count") || !holes.get().has("diameter")) {
            return leaveOut(FilterPart.INLET_HOLES);
        }
        OptionalDouble own = inputs.value(holes.get(), "thickness");
        double thickness = own.isPresent() ? own.getAsDouble() : inputs.valueOr(plate.get(), "thickness", 0);
        return Openings.hole(inputs.value(holes.get(), "diameter").orElseThrow(), thickness, Openings.SHORT_TUBE)
                .parallelOf(inputs.value(holes.get(), "count").orElseThrow());
    }

    private PressureDropLaw flap() {
        Optional<Section> flap = sheet.section("antiDrainFlap");
        if (flap.isPresent() && !flap.get().flag("present").orElse(true)) {
            return AdditiveLaw.NONE;
        }
        if (flap.isEmpty()
                || !flap.get().has("lipDiameter")
                || !flap.get().has("freeLength")
                || !flap.get().has("thickness")) {
            return leaveOut(FilterPart.ANTI_DRAIN_FLAP);
        }
        Section lip = flap.get();
        double freeLength = inputs.value(lip, "freeLength").orElseThrow();
        double compliance = FlapValve.stripCompliance(
                freeLength,
                inputs.value(lip, "thickness").orElseThrow(),
                orAssumed(lip, "modulus", Measured.factor(Kind.STRESS, 4e6, 0.3, Provenance.TYPICAL)),
                RUBBER_POISSON);
        double preload = orAssumed(
                lip, "openingPressure", Measured.factor(Kind.PRESSURE_DIFFERENCE, 1200, 0.4, Provenance.TYPICAL));
        double edge = Math.PI * inputs.value(lip, "lipDiameter").orElseThrow();
        return new FlapValve(compliance, preload, freeLength / 2, edge, FLAP_LEAK);
    }

    private double orAssumed(Section section, String key, Measured typical) {
        return inputs.measured(section, key)
                .orElseGet(() -> inputs.assumed(section.pathOf(key), typical, "assumption.commonFlap"))
                .value();
    }

    private double annulus() {
        Optional<Section> outside = sheet.section("outside");
        Optional<Section> element = sheet.section("element");
        OptionalDouble inside = outside.map(this::canInside).orElse(OptionalDouble.empty());
        OptionalDouble outer =
                element.map(section -> inputs.value(section, "outsideDiameter")).orElse(OptionalDouble.empty());
        OptionalDouble length =
                element.map(section -> inputs.value(section, "length")).orElse(OptionalDouble.empty());
        if (inside.isEmpty() || outer.isEmpty() || length.isEmpty() || inside.getAsDouble() <= outer.getAsDouble()) {
            leaveOut(FilterPart.CAN_ANNULUS);
            return 0;
        }
        return Passages.annulus(inside.getAsDouble() / 2, outer.getAsDouble() / 2, length.getAsDouble())
                .laminar();
    }

    private OptionalDouble canInside(Section outside) {
        OptionalDouble stated = inputs.value(outside, "insideDiameter");
        OptionalDouble diameter = inputs.value(outside, "diameter");
        OptionalDouble wall = inputs.value(outside, "wallThickness");
        if (stated.isPresent() || diameter.isEmpty() || wall.isEmpty()) {
            return stated;
        }
        return OptionalDouble.of(diameter.getAsDouble() - 2 * wall.getAsDouble());
    }

    private AdditiveLaw tubeOpenings() {
        Optional<Section> tube = sheet.section("centerTube");
        Optional<Section> holes = tube.flatMap(section -> section.section("holes"));
        Optional<Section> louvers = tube.flatMap(section -> section.section("louvers"));
        double wall =
                tube.map(section -> inputs.valueOr(section, "wallThickness", 0)).orElse(0.0);
        double open = 1
                - tube.map(section -> inputs.valueOr(section, "coveredShare", 0))
                        .orElse(0.0);
        if (holes.isPresent() && holes.get().has("count") && holes.get().has("diameter")) {
            return Openings.hole(inputs.value(holes.get(), "diameter").orElseThrow(), wall, Openings.SHARP_EDGE)
                    .parallelOf(open * inputs.value(holes.get(), "count").orElseThrow());
        }
        if (louvers.isPresent()
                && louvers.get().has("count")
                && louvers.get().has("length")
                && louvers.get().has("width")) {
            return Openings.slot(
                            inputs.value(louvers.get(), "width").orElseThrow(),
                            inputs.value(louvers.get(), "length").orElseThrow(),
                            wall,
                            Openings.SHARP_EDGE)
                    .parallelOf(open * inputs.value(louvers.get(), "count").orElseThrow());
        }
        return leaveOut(FilterPart.TUBE_OPENINGS);
    }

    private AdditiveLaw centerTube() {
        Optional<Section> tube = sheet.section("centerTube");
        OptionalDouble bore =
                tube.map(section -> inputs.value(section, "insideDiameter")).orElse(OptionalDouble.empty());
        OptionalDouble own =
                tube.map(section -> inputs.value(section, "length")).orElse(OptionalDouble.empty());
        OptionalDouble length = own.isPresent()
                ? own
                : sheet.section("element")
                        .map(section -> inputs.value(section, "length"))
                        .orElse(OptionalDouble.empty());
        if (bore.isEmpty() || length.isEmpty()) {
            return leaveOut(FilterPart.CENTER_TUBE);
        }
        return Passages.collectingTube(bore.getAsDouble(), length.getAsDouble());
    }

    private AdditiveLaw outletBore() {
        Optional<Section> bore = sheet.section("basePlate").flatMap(section -> section.section("outletBore"));
        if (bore.isEmpty() || !bore.get().has("diameter")) {
            return leaveOut(FilterPart.OUTLET_BORE);
        }
        return Openings.hole(
                inputs.value(bore.get(), "diameter").orElseThrow(),
                inputs.valueOr(bore.get(), "length", 0),
                Openings.SHORT_TUBE);
    }

    private AdditiveLaw leaveOut(FilterPart part) {
        leftOut.add(part);
        return AdditiveLaw.NONE;
    }
}
