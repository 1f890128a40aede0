package org.coldpleat.model.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.coldstart.StartPhase;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.coldstart.ThermalModel;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/** The start that was asked for, ready to be computed for any candidate with any unknown moved. */
final class StartPlan {
    /** Share of the room inside a can that oil fills [1]. */
    @Source("common practice, no source: steel, medium and caps take 10 to 20 %")
    private static final double OIL_IN_CAN = 0.85;

    /** Specific heat of the sheet steel of can and element [J/(kg K)]. */
    @Source("iron at 25 degrees C: 449 J/(kg K); CRC Handbook of Chemistry and Physics")
    private static final double STEEL_HEAT = 449;

    /** Share of the flow of a dome valve that flushes the can on its way through the annulus [1]. */
    @Source("common practice, no source: between 0 and 1, the middle")
    private static final double DOME_FLUSH = 0.5;

    private final ResolvedCase resolved;
    private final ColdStartRequest request;
    private final StartBuilder.Built built;
    private final Inputs ledger;

    StartPlan(ResolvedCase resolved, ColdStartRequest request) {
        this.resolved = resolved;
        this.request = request;
        if (resolved.document().root().section("start").isEmpty()) {
            throw new IllegalArgumentException("the case has no start section");
        }
        ledger = Inputs.shared();
        built = StartBuilder.start(resolved, ledger);
        request.schedule()
                .ifPresent(name -> require(name, List.copyOf(model().schedules().keySet()), "schedule"));
        request.state()
                .ifPresent(name -> require(
                        name,
                        resolved.duties().stream()
                                .filter(Duty::isEngine)
                                .map(Duty::name)
                                .toList(),
                        "state of the engine"));
    }

    private static void require(String name, List<String> known, String what) {
        if (!known.contains(name)) {
            throw new IllegalArgumentException("no " + what + " " + name + " in " + known);
        }
    }

    /** Unknowns of the start itself, by path. */
    Map<String, Unknown> unknowns() {
        return ledger.unknowns();
    }

    List<Assumption> assumptions() {
        return ledger.assumptions();
    }

    StartBuilder.Built built() {
        return built;
    }

    /** The start as asked for, nothing moved. */
    StartModel model() {
        return withRequest(built.model());
    }

    /** The start with some of its unknowns moved: path to value [SI]. */
    StartModel moving(Map<String, Double> moved) {
        return withRequest(StartBuilder.start(resolved, Inputs.shared().moving(moved, Map.of()))
                .model());
    }

    private StartModel withRequest(StartModel model) {
        double from = request.from().orElse(model.from());
        OptionalDouble ambient = request.ambient().isPresent() ? request.ambient() : request.from();
        return model.withTemperatures(from, ambient.orElse(model.ambient()));
    }

    /** Name of the schedule or of the state held. */
    String name() {
        return request.state()
                .or(request::schedule)
                .orElseGet(() -> built.model().schedules().keySet().iterator().next());
    }

    /** Phases at engine speed. */
    List<StartModel.Phase> phases(StartModel model) {
        if (request.state().isEmpty()) {
            return model.schedules().get(name());
        }
        double speed = resolved.duties().stream()
                .filter(duty -> duty.isEngine() && duty.name().equals(name()))
                .findFirst()
                .orElseThrow()
                .drive();
        double duration = model.schedules().values().iterator().next().stream()
                .mapToDouble(StartModel.Phase::duration)
                .sum();
        HeatTable.Point heat = model.heats().at(speed);
        return List.of(new StartModel.Phase(name(), speed, duration, heat.toMetal(), heat.toOil()));
    }

    /** The phase that lasts longest, as a duty. */
    Duty longestPhase() {
        StartModel.Phase longest = phases(model()).stream()
                .max((a, b) -> Double.compare(a.duration(), b.duration()))
                .orElseThrow();
        return new Duty(Duty.ENGINE, longest.state(), longest.speed());
    }

    /** A start to be computed: shared model, candidate and start may each have an unknown moved. */
    StartUpSpec spec(SharedModel shared, BuiltCandidate candidate, int position, StartModel model) {
        DutyModel mounted = new DutyModel(shared, candidate.filter(), new Duty(Duty.ENGINE, "", 0));
        EngineCircuit circuit = mounted.circuit().orElseThrow();
        EngineModel engine = shared.engine().orElseThrow();
        Section sheet = resolved.document().root().sections("candidates").get(position);
        double inCan = OIL_IN_CAN * roomInside(sheet);
        double steel = inCan == 0
                ? 0
                : STEEL_HEAT
                        * sheet.section("outside")
                                .flatMap(outside -> outside.quantity("mass"))
                                .map(Measured::value)
                                .orElse(0.0);
        boolean dome = candidate.filter().elementValve().isPresent()
                && candidate.filter().elementValveLocation() == BypassLocation.DOME;
        StartModel.Heat heat = model.heat();
        ThermalModel thermal = new ThermalModel(
                heat.oilVolume() * shared.oil().at(model.from()).density(),
                heat.metalHeatCapacity(),
                inCan,
                steel,
                dome ? DOME_FLUSH : 0,
                heat.oilToMetal(),
                heat.oilToAmbient(),
                heat.metalToAmbient(),
                model.ambient());
        List<StartPhase> phases = phases(model).stream()
                .map(phase -> new StartPhase(
                        phase.duration(), phase.speed() * engine.pumpTurns(), phase.toMetal(), phase.toOil()))
                .toList();
        StartSchedule schedule = new StartSchedule(phases);
        return new StartUpSpec(
                circuit,
                mounted.filter(),
                thermal,
                model.trace(),
                schedule,
                model.from(),
                model.galleryVolume(),
                model.hot(),
                schedule.duration(),
                StartUpSpec.USUAL_TOLERANCE);
    }

    /** Room inside the can, or around the element where the can is not known [m3]; 0 if neither is. */
    private static double roomInside(Section sheet) {
        Optional<Section> outside = sheet.section("outside").filter(can -> can.has("diameter") && can.has("length"));
        if (outside.isPresent()) {
            double wall = value(outside.get(), "wallThickness");
            double bore = outside.get().has("insideDiameter")
                    ? value(outside.get(), "insideDiameter")
                    : value(outside.get(), "diameter") - 2 * wall;
            return cylinder(bore, value(outside.get(), "length") - 2 * wall);
        }
        return sheet.section("element")
                .map(element -> cylinder(value(element, "outsideDiameter"), value(element, "length")))
                .orElse(0.0);
    }

    private static double cylinder(double diameter, double length) {
        return Math.max(0, Math.PI / 4 * diameter * diameter * length);
    }

    private static double value(Section section, String key) {
        return section.quantity(key).map(Measured::value).orElse(0.0);
    }
}
