package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.coldstart.Openings;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chain behind a number of one candidate in one duty, down to what was read off the bench. */
final class Explainer {
    static final String OPENING = "openingTemperature";
    static final String HOT_DROP = "hotPressureDrop";
    static final String RESISTANCE = "mediumResistance";
    static final String AREA = "mediumArea";
    static final String CHANNELS = "channelFactor";
    static final String RATIO = "resistanceRatio";
    static final List<String> QUANTITIES = List.of(
            OPENING,
            HOT_DROP,
            RESISTANCE,
            AREA,
            CHANNELS,
            RATIO,
            StartExplainer.SECONDS_OPEN,
            StartExplainer.UNFILTERED,
            ServiceExplainer.HOURS,
            ServiceExplainer.WINTER_HOURS);

    private final ResolvedCase resolved;
    private final int position;
    private final Duty duty;
    private final BuiltCandidate candidate;
    private final Section sheet;
    private final DutyModel model;

    private Explainer(ResolvedCase resolved, int position, Duty duty) {
        this.resolved = resolved;
        this.position = position;
        this.duty = duty;
        candidate = resolved.candidates().get(position);
        sheet = resolved.document().root().sections("candidates").get(position);
        model = new DutyModel(resolved.shared(), candidate.filter(), duty);
    }

    static Explanation explain(ResolvedCase resolved, int position, Duty duty, Optional<String> quantity) {
        Explainer explainer = new Explainer(resolved, position, duty);
        return switch (quantity.orElse(OPENING)) {
            case OPENING -> explainer.opening();
            case HOT_DROP -> explainer.drop(HOT_DROP, resolved.warmestNamed());
            case RESISTANCE -> explainer.medium().resistance();
            case AREA -> explainer.medium().area();
            case CHANNELS -> explainer.medium().channels();
            case StartExplainer.SECONDS_OPEN -> StartExplainer.secondsOpen(resolved, position);
            case StartExplainer.UNFILTERED -> StartExplainer.unfiltered(resolved, position);
            case ServiceExplainer.HOURS -> ServiceExplainer.hours(resolved, position);
            case ServiceExplainer.WINTER_HOURS -> ServiceExplainer.winterHours(resolved, position);
            case RATIO -> explainer.ratio(resolved.coldestNamed());
            default -> throw new IllegalArgumentException("no quantity " + quantity.get() + " in " + QUANTITIES);
        };
    }

    private MediumExplainer medium() {
        return new MediumExplainer(resolved, position, candidate, sheet);
    }

    private Explanation opening() {
        if (!model.hasValve()) {
            return Leaves.link("noValve", Kind.TEMPERATURE, Double.NaN, List.of(drop("coldDrop", resolved.from())));
        }
        Openings openings = resolved.openingFinder().find(at -> model.ratio(model.heldShutAt(at, Optional.empty())));
        boolean opens = openings.kind() == Openings.Kind.BELOW;
        double at = opens ? openings.warmestOpen() : openings.greatestAt();
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(valveRatio(at));
        if (duty.isEngine()) {
            inputs.add(ratio(at));
        }
        return new Explanation(
                opens ? OPENING : "greatestRatioTemperature",
                candidate.name() + ", " + duty.name(),
                Kind.TEMPERATURE,
                at,
                "",
                "",
                inputs);
    }

    /** Difference across the held valve over its opening pressure. */
    private Explanation valveRatio(double at) {
        SolvedPoint point = model.heldShutAt(at, Optional.empty());
        double difference = point.filter().leadingValve().pressureDifference();
        List<Explanation> parts = new ArrayList<>();
        parts.add(flow(point));
        parts.add(viscosity(at));
        Set<FilterPart> beside = besideLeadingValve(point);
        parts.addAll(parts(point, beside));
        return Leaves.link(
                "valveRatio",
                Kind.RATIO,
                model.ratio(point),
                List.of(
                        Leaves.link("valveDifference", Kind.PRESSURE_DIFFERENCE, difference, parts),
                        openingPressure()));
    }

    private Explanation openingPressure() {
        Optional<Section> own = sheet.section("bypass").filter(section -> section.has("openingPressure"));
        Optional<Section> engine =
                resolved.document().root().section("engine").flatMap(section -> section.section("blockBypass"));
        double pressure = model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .orElseThrow()
                .openingPressure();
        List<Explanation> inputs = new ArrayList<>(Leaves.of(own.isPresent() ? own : engine, "openingPressure"));
        inputs.addAll(BenchLeaves.of(sheet, "scaleTest"));
        return Leaves.link("openingPressure", Kind.PRESSURE_DIFFERENCE, pressure, inputs);
    }

    private Explanation drop(String key, double at) {
        SolvedPoint point = model.at(at, Optional.empty());
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(flow(point));
        inputs.add(viscosity(at));
        inputs.addAll(parts(point, EnumSet.allOf(FilterPart.class)));
        return Leaves.link(key, Kind.PRESSURE_DIFFERENCE, point.filter().totalDrop(), inputs);
    }

    private Explanation flow(SolvedPoint point) {
        List<Explanation> inputs = new ArrayList<>();
        Section root = resolved.document().root();
        if (duty.isEngine()) {
            Optional<Section> engine = root.section("engine");
            var circuit = point.point();
            inputs.add(Leaves.link(
                    "pumpFlow",
                    Kind.FLOW_RATE,
                    circuit.pumpFlow(),
                    Leaves.of(engine.flatMap(one -> one.section("pump")), "displacement", "slip")));
            inputs.add(Leaves.link("reliefFlow", Kind.FLOW_RATE, circuit.reliefFlow(), List.of()));
            inputs.add(Leaves.link("pumpPressure", Kind.GAUGE_PRESSURE, circuit.pumpPressure(), List.of()));
            inputs.add(Leaves.link("galleryPressure", Kind.GAUGE_PRESSURE, circuit.galleryPressure(), List.of()));
            inputs.add(Leaves.link("filmTemperature", Kind.TEMPERATURE, circuit.filmTemperature(), List.of()));
            inputs.addAll(stateLeaves(engine, "speed"));
        } else {
            inputs.addAll(stateLeaves(root.section("flowStand"), "flow"));
        }
        return Leaves.link("filterFlow", Kind.FLOW_RATE, point.filter().totalFlow(), inputs);
    }

    private List<Explanation> stateLeaves(Optional<Section> setting, String key) {
        return Leaves.of(
                setting.flatMap(section -> section.sections("states").stream()
                        .filter(state -> state.text("name").orElse("").equals(duty.name()))
                        .findFirst()),
                key);
    }

    private Explanation viscosity(double at) {
        var oil = resolved.shared().oil().oil();
        List<Explanation> inputs = new ArrayList<>();
        Section section = resolved.document().root().section("oil").orElseThrow();
        for (Section point : section.sections("points")) {
            inputs.addAll(Leaves.of(Optional.of(point), "temperature", "kinematic", "dynamic"));
        }
        inputs.addAll(Leaves.of(section.section("coldPoint"), "temperature", "kinematic", "dynamic"));
        inputs.addAll(Leaves.of(Optional.of(section), "viscosityIndex"));
        Explanation kinematic = Leaves.link(
                "kinematicViscosity",
                Kind.KINEMATIC_VISCOSITY,
                oil.kinematicViscosity(at),
                oil.viscositySpread(at),
                inputs);
        Explanation density =
                Leaves.link("density", Kind.DENSITY, oil.density(at), Leaves.of(Optional.of(section), "density"));
        return Leaves.link(
                "dynamicViscosity", Kind.DYNAMIC_VISCOSITY, oil.dynamicViscosity(at), List.of(kinematic, density));
    }

    /** Parts to which the valve that opens first is parallel. */
    private Set<FilterPart> besideLeadingValve(SolvedPoint point) {
        boolean own = point.filter().elementValve().ratio()
                >= point.filter().blockValve().ratio();
        if (!own) {
            return EnumSet.allOf(FilterPart.class);
        }
        return model.filter().elementValveLocation() == BypassLocation.DOME
                ? EnumSet.of(FilterPart.PLEAT_PACK, FilterPart.TUBE_OPENINGS)
                : EnumSet.range(FilterPart.CAN_ANNULUS, FilterPart.CENTER_TUBE);
    }

    /** Those of some parts that drop pressure at this point, the pack with its own chain. */
    private List<Explanation> parts(SolvedPoint point, Set<FilterPart> some) {
        List<Explanation> parts = new ArrayList<>();
        point.filter().partDrops().forEach((part, drop) -> {
            if (drop != 0 && some.contains(part)) {
                parts.add(new Explanation(
                        "part",
                        part.name(),
                        Kind.PRESSURE_DIFFERENCE,
                        drop,
                        "",
                        "",
                        part == FilterPart.PLEAT_PACK ? List.of(medium().pack()) : partLeaves(part)));
            }
        });
        return parts;
    }

    private List<Explanation> partLeaves(FilterPart part) {
        Optional<Section> plate = sheet.section("basePlate");
        Optional<Section> tube = sheet.section("centerTube");
        return switch (part) {
            case INLET_HOLES ->
                Leaves.of(plate.flatMap(one -> one.section("inletHoles")), "count", "diameter", "thickness");
            case ANTI_DRAIN_FLAP ->
                Leaves.of(sheet.section("antiDrainFlap"), "lipDiameter", "freeLength", "thickness", "modulus");
            case CAN_ANNULUS -> Leaves.of(sheet.section("outside"), "diameter", "insideDiameter", "wallThickness");
            case PLEAT_PACK -> List.of();
            case TUBE_OPENINGS -> {
                List<Explanation> leaves =
                        new ArrayList<>(Leaves.of(tube.flatMap(one -> one.section("holes")), "count", "diameter"));
                leaves.addAll(Leaves.of(tube.flatMap(one -> one.section("louvers")), "count", "length", "width"));
                yield leaves;
            }
            case CENTER_TUBE -> Leaves.of(tube, "insideDiameter", "length");
            case OUTLET_BORE -> Leaves.of(plate.flatMap(one -> one.section("outletBore")), "diameter", "length");
        };
    }

    /** Filter over gallery resistance in the creeping limit, and the closed forms that follow from it. */
    private Explanation ratio(double at) {
        if (!duty.isEngine()) {
            return Leaves.link(RATIO, Kind.RATIO, Double.NaN, List.of());
        }
        EngineModel engine = resolved.shared().engine().orElseThrow();
        Fluid fluid = resolved.shared().oil().at(at);
        SolvedPoint point = model.heldShutAt(at, Optional.empty());
        double filmRatio = resolved.shared()
                        .oil()
                        .at(Math.max(at, point.point().filmTemperature()))
                        .dynamicViscosity()
                / fluid.dynamicViscosity();
        double filter = creeping(model.filter());
        double gallery = engine.gallery().creepingResistance(filmRatio);
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(Leaves.link("filterResistance", Kind.LAMINAR_RESISTANCE, filter, List.of()));
        List<Explanation> galleryInputs = new ArrayList<>(Leaves.of(
                resolved.document()
                        .root()
                        .section("engine")
                        .flatMap(one -> one.section("gallery"))
                        .flatMap(one -> one.section("hotReading")),
                "pressure",
                "temperature",
                "speed",
                "bearingShare",
                "jetBore",
                "jetLength"));
        galleryInputs.add(Leaves.link("filmViscosityRatio", Kind.RATIO, filmRatio, List.of()));
        engine.laminarShare()
                .ifPresent(share -> galleryInputs.add(Leaves.link("laminarShare", Kind.FRACTION, share, List.of())));
        inputs.add(Leaves.link("galleryResistance", Kind.LAMINAR_RESISTANCE, gallery, galleryInputs));
        inputs.addAll(closedForms(engine, filter, gallery));
        return Leaves.link(RATIO, Kind.RATIO, filter / gallery, inputs);
    }

    private List<Explanation> closedForms(EngineModel engine, double filter, double gallery) {
        List<Explanation> forms = new ArrayList<>();
        double shutFlow = ClosedForms.shutFlow(engine.pump(), duty.drive() * engine.pumpTurns(), filter, gallery);
        forms.add(Leaves.link("closed.shutFlow", Kind.FLOW_RATE, shutFlow, List.of()));
        Optional<Double> opening = model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .map(valve -> valve.openingPressure());
        engine.reliefs().stream().findFirst().ifPresent(relief -> {
            double set = relief.setPressure();
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double ceiling = outlet
                    ? ClosedForms.reliefCeiling(filter, gallery, set)
                    : ClosedForms.gallerySensingDrop(filter / gallery, set);
            forms.add(Leaves.link(
                    outlet ? "closed.ceiling" : "closed.galleryCeiling", Kind.PRESSURE_DIFFERENCE, ceiling, List.of()));
            opening.filter(pressure -> pressure < set)
                    .ifPresent(pressure -> forms.add(Leaves.link(
                            outlet ? "closed.criticalRatio" : "closed.galleryCriticalRatio",
                            Kind.RATIO,
                            outlet ? ClosedForms.criticalRatio(pressure, set) : pressure / set,
                            List.of())));
        });
        opening.ifPresent(pressure -> forms.add(Leaves.link(
                "closed.thresholdViscosity",
                Kind.DYNAMIC_VISCOSITY,
                ClosedForms.thresholdViscosity(pressure, filter, shutFlow),
                List.of())));
        return forms;
    }

    /** Resistance of the whole filtered path in the creeping limit [1/m3]; the flap counts as lifted. */
    private static double creeping(FilterAssembly filter) {
        return laminar(filter.inletHoles())
                + (filter.annulusResistance() + filter.centerTube().laminar()) / 3
                + filter.elementResistance()
                + filter.tubeOpenings().laminar()
                + filter.outletBore().laminar();
    }

    private static double laminar(PressureDropLaw law) {
        return law instanceof AdditiveLaw additive ? additive.laminar() : 0;
    }
}
