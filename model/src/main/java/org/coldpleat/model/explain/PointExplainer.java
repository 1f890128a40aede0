package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chains of an operating point: flow, oil, parts, and the valve held shut. */
final class PointExplainer {
    private final ResolvedCase resolved;
    private final int position;
    private final OperatingState operatingState;
    private final StateModel model;
    private final Section sheet;

    PointExplainer(ResolvedCase resolved, int position, OperatingState operatingState, StateModel model) {
        this.resolved = resolved;
        this.position = position;
        this.operatingState = operatingState;
        this.model = model;
        sheet = resolved.sheet(position);
    }

    MediumExplainer medium() {
        return new MediumExplainer(resolved, position, resolved.candidates().get(position), sheet);
    }

    /** Difference across the held valve over its opening pressure. */
    Explanation valveRatio(double at) {
        SolvedPoint point = model.heldShutAt(at);
        double difference = point.filter().leadingValve().pressureDifference();
        List<Explanation> parts = new ArrayList<>();
        parts.add(flow(point));
        parts.add(viscosity(at));
        Set<FilterPart> beside = besideLeadingValve(point);
        parts.addAll(parts(point, beside));
        return ChainEnds.link(
                "valveRatio",
                Kind.RATIO,
                model.ratio(point),
                List.of(
                        ChainEnds.link("valveDifference", Kind.PRESSURE_DIFFERENCE, difference, parts),
                        openingPressure()));
    }

    Explanation openingPressure() {
        Optional<Section> own = sheet.section("bypass").filter(section -> section.has("openingPressure"));
        Optional<Section> engine =
                resolved.document().root().section("engine").flatMap(section -> section.section("blockBypass"));
        double pressure = model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .orElseThrow()
                .openingPressure();
        List<Explanation> inputs = new ArrayList<>(ChainEnds.of(own.isPresent() ? own : engine, "openingPressure"));
        inputs.addAll(BenchChainEnds.of(sheet, "scaleTest"));
        inputs.addAll(stoodIn("bypass.openingPressure"));
        return ChainEnds.link("openingPressure", Kind.PRESSURE_DIFFERENCE, pressure, inputs);
    }

    Explanation drop(String key, double at) {
        SolvedPoint point = model.at(at);
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(flow(point));
        inputs.add(viscosity(at));
        inputs.addAll(parts(point, EnumSet.allOf(FilterPart.class)));
        return ChainEnds.link(key, Kind.PRESSURE_DIFFERENCE, point.filter().totalDrop(), inputs);
    }

    Explanation flow(SolvedPoint point) {
        List<Explanation> inputs = new ArrayList<>();
        Section root = resolved.document().root();
        if (operatingState.isEngine()) {
            Optional<Section> engine = root.section("engine");
            var circuit = point.point();
            inputs.add(ChainEnds.link(
                    "pumpFlow",
                    Kind.FLOW_RATE,
                    circuit.pumpFlow(),
                    ChainEnds.of(engine.flatMap(one -> one.section("pump")), "displacement", "slip")));
            inputs.add(ChainEnds.link("reliefFlow", Kind.FLOW_RATE, circuit.reliefFlow(), List.of()));
            inputs.add(ChainEnds.link("pumpPressure", Kind.GAUGE_PRESSURE, circuit.pumpPressure(), List.of()));
            inputs.add(ChainEnds.link("galleryPressure", Kind.GAUGE_PRESSURE, circuit.galleryPressure(), List.of()));
            inputs.add(ChainEnds.link("filmTemperature", Kind.TEMPERATURE, circuit.filmTemperature(), List.of()));
            inputs.addAll(stateLeaves(engine, "speed"));
        } else {
            inputs.addAll(stateLeaves(root.section("flowStand"), "flow"));
        }
        return ChainEnds.link("filterFlow", Kind.FLOW_RATE, point.filter().totalFlow(), inputs);
    }

    private List<Explanation> stateLeaves(Optional<Section> setting, String key) {
        return ChainEnds.of(
                setting.flatMap(section -> section.sections("states").stream()
                        .filter(state -> state.text("name").orElse("").equals(operatingState.name()))
                        .findFirst()),
                key);
    }

    Explanation viscosity(double at) {
        var oil = resolved.shared().oil().oil();
        List<Explanation> inputs = new ArrayList<>();
        Section section = resolved.document().root().section("oil").orElseThrow();
        inputs.addAll(oilLeaves(section));
        section.section("topUp").ifPresent(other -> {
            inputs.addAll(ChainEnds.of(Optional.of(other), "share"));
            inputs.addAll(oilLeaves(other));
        });
        Explanation kinematic = ChainEnds.link(
                "kinematicViscosity",
                Kind.KINEMATIC_VISCOSITY,
                oil.kinematicViscosity(at),
                oil.viscositySpread(at),
                inputs);
        Explanation density =
                ChainEnds.link("density", Kind.DENSITY, oil.density(at), ChainEnds.of(Optional.of(section), "density"));
        return ChainEnds.link(
                "dynamicViscosity", Kind.DYNAMIC_VISCOSITY, oil.dynamicViscosity(at), List.of(kinematic, density));
    }

    private static List<Explanation> oilLeaves(Section oil) {
        List<Explanation> leaves = new ArrayList<>();
        for (Section point : oil.sections("points")) {
            leaves.addAll(ChainEnds.of(Optional.of(point), "temperature", "kinematic", "dynamic"));
        }
        leaves.addAll(ChainEnds.of(oil.section("coldPoint"), "temperature", "kinematic", "dynamic"));
        leaves.addAll(ChainEnds.of(Optional.of(oil), "viscosityIndex"));
        return leaves;
    }

    /** Parts to which the valve that opens first is parallel. */
    private Set<FilterPart> besideLeadingValve(SolvedPoint point) {
        boolean own = point.filter().elementValve().ratio()
                >= point.filter().blockValve().ratio();
        return beside(!own);
    }

    /** Parts to which the valve in the block, or that of the filter, is parallel. */
    Set<FilterPart> beside(boolean block) {
        if (block) {
            return EnumSet.allOf(FilterPart.class);
        }
        return model.filter().elementValveLocation() == BypassLocation.DOME
                ? EnumSet.of(FilterPart.PLEAT_PACK, FilterPart.TUBE_OPENINGS)
                : EnumSet.range(FilterPart.CAN_ANNULUS, FilterPart.CENTER_TUBE);
    }

    /** Those of some parts that drop pressure at this point, the pack with its own chain. */
    List<Explanation> parts(SolvedPoint point, Set<FilterPart> some) {
        return parts(point, some, part -> part == FilterPart.PLEAT_PACK ? List.of(medium().pack()) : partLeaves(part));
    }

    /** The same without what each part rests on. */
    List<Explanation> partsInShort(SolvedPoint point, Set<FilterPart> some) {
        return parts(point, some, part -> List.of());
    }

    private static List<Explanation> parts(
            SolvedPoint point, Set<FilterPart> some, Function<FilterPart, List<Explanation>> inputs) {
        List<Explanation> parts = new ArrayList<>();
        point.filter().partDrops().forEach((part, drop) -> {
            if (drop != 0 && some.contains(part)) {
                parts.add(new Explanation("part", part.name(), Kind.PRESSURE_DIFFERENCE, drop, inputs.apply(part)));
            }
        });
        return parts;
    }

    /** What was read or stood in of a part. */
    private List<Explanation> partLeaves(FilterPart part) {
        List<Explanation> leaves = new ArrayList<>(readLeaves(part));
        leaves.addAll(
                switch (part) {
                    case INLET_HOLES -> stoodIn("basePlate.inletHoles");
                    case ANTI_DRAIN_FLAP -> stoodIn("antiDrainFlap");
                    case CAN_ANNULUS -> stoodIn("outside", "element");
                    case PLEAT_PACK -> List.of();
                    case TUBE_OPENINGS -> stoodIn("centerTube.holes", "centerTube.wallThickness");
                    case CENTER_TUBE -> stoodIn("centerTube.insideDiameter");
                    case OUTLET_BORE -> stoodIn("basePlate.outletBore");
                });
        return leaves;
    }

    /** Values that stood in below some paths of the sheet. */
    private List<Explanation> stoodIn(String... paths) {
        return resolved.assumptions().stream()
                .filter(one -> one.value().written().isEmpty())
                .filter(one -> Arrays.stream(paths).anyMatch(path -> one.path().startsWith(sheet.path() + "." + path)))
                .map(ChainEnds::assumed)
                .toList();
    }

    private List<Explanation> readLeaves(FilterPart part) {
        Optional<Section> plate = sheet.section("basePlate");
        Optional<Section> tube = sheet.section("centerTube");
        return switch (part) {
            case INLET_HOLES ->
                ChainEnds.of(plate.flatMap(one -> one.section("inletHoles")), "count", "diameter", "thickness");
            case ANTI_DRAIN_FLAP ->
                ChainEnds.of(sheet.section("antiDrainFlap"), "lipDiameter", "freeLength", "thickness", "modulus");
            case CAN_ANNULUS -> ChainEnds.of(sheet.section("outside"), "diameter", "insideDiameter", "wallThickness");
            case PLEAT_PACK -> List.of();
            case TUBE_OPENINGS -> {
                List<Explanation> leaves =
                        new ArrayList<>(ChainEnds.of(tube.flatMap(one -> one.section("holes")), "count", "diameter"));
                leaves.addAll(ChainEnds.of(tube.flatMap(one -> one.section("louvers")), "count", "length", "width"));
                yield leaves;
            }
            case CENTER_TUBE -> ChainEnds.of(tube, "insideDiameter", "length");
            case OUTLET_BORE -> ChainEnds.of(plate.flatMap(one -> one.section("outletBore")), "diameter", "length");
        };
    }
}
