package org.coldpleat.model.coldstart.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.coldstart.StartPhase;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;

/** The start that was asked for, ready to be computed for any candidate with any unknown moved. */
public final class StartPlan {
    private static final String SCHEDULES = "start.schedules[";

    private final ResolvedCase resolved;
    private final ColdStartRequest request;
    private final StartBuilder.Built built;

    /** True if the case says how the engine is started. */
    public static boolean isStated(ResolvedCase resolved) {
        return resolved.document().root().has("start");
    }

    public StartPlan(ResolvedCase resolved, ColdStartRequest request) {
        this.resolved = resolved;
        this.request = request;
        if (resolved.document().root().section("start").isEmpty()) {
            throw new IllegalArgumentException("the case has no start section");
        }
        built = StartBuilder.start(resolved, Map.of());
        request.schedule()
                .ifPresent(name -> require(name, List.copyOf(model().schedules().keySet()), "schedule"));
        request.state().ifPresent(name -> require(name, states(), "state of the engine"));
    }

    private static void require(String name, List<String> known, String what) {
        if (!known.contains(name)) {
            throw new IllegalArgumentException("no " + what + " " + name + " in " + known);
        }
    }

    public StartOutline outline() {
        StartModel model = built.model();
        return new StartOutline(
                List.copyOf(model.schedules().keySet()),
                states(),
                model.from(),
                model.ambient(),
                model.hot(),
                model.trace().isPresent());
    }

    private List<String> states() {
        return resolved.operatingStates().stream()
                .filter(OperatingState::isEngine)
                .map(OperatingState::name)
                .toList();
    }

    /** Unknowns of the start itself that bear on one candidate and on the schedule asked for, by path. */
    public Map<String, Unknown> unknowns(int position) {
        Map<String, Unknown> found = new LinkedHashMap<>(built.unknowns());
        found.values().removeIf(one -> (one.candidate() >= 0 && one.candidate() != position) || !bears(one.path()));
        return found;
    }

    private boolean bears(String path) {
        if (!path.startsWith(SCHEDULES)) {
            return true;
        }
        int asked = List.copyOf(built.model().schedules().keySet()).indexOf(name());
        return path.startsWith(SCHEDULES + Math.max(0, asked) + "]");
    }

    public List<Assumption> assumptions() {
        return built.assumptions();
    }

    /** Findings about the data of the start asked for. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(built.notices());
        StartModel model = model();
        double fastest = model.heats().fastest();
        for (StartModel.Phase phase : phases(model)) {
            HeatTable.Point read = model.heats().at(phase.speed());
            if (fastest > 0 && phase.speed() > fastest && phase.toMetal() == read.toMetal()) {
                notices.add(Notice.of(
                        "start.heatBeyond",
                        Severity.WARNING,
                        "start",
                        Amount.speed(phase.speed()),
                        Amount.speed(fastest)));
            }
        }
        return notices;
    }

    /** The start as asked for, nothing moved. */
    public StartModel model() {
        return withRequest(built.model());
    }

    /** The start with some of its unknowns moved: path to value [SI]. */
    public StartModel moving(Map<String, Double> moved) {
        return withRequest(StartBuilder.start(resolved, moved).model());
    }

    private StartModel withRequest(StartModel model) {
        double from = request.from().orElse(model.from());
        OptionalDouble ambient = request.ambient().isPresent() ? request.ambient() : request.from();
        return model.withTemperatures(from, ambient.orElse(model.ambient()));
    }

    /** Name of the schedule or of the state held. */
    public String name() {
        return request.state()
                .or(request::schedule)
                .orElseGet(() -> built.model().schedules().keySet().iterator().next());
    }

    /** Phases at engine speed. */
    public List<StartModel.Phase> phases(StartModel model) {
        if (request.state().isEmpty()) {
            return model.schedules().get(name());
        }
        double speed = resolved.operatingStates().stream()
                .filter(operatingState ->
                        operatingState.isEngine() && operatingState.name().equals(name()))
                .findFirst()
                .orElseThrow()
                .drive();
        double duration = model.schedules().values().iterator().next().stream()
                .mapToDouble(StartModel.Phase::duration)
                .sum();
        HeatTable.Point heat = model.heats().at(speed);
        return List.of(new StartModel.Phase(name(), speed, duration, heat.toMetal(), heat.toOil()));
    }

    /** The phase that lasts longest, as an operating state. */
    public OperatingState longestPhase() {
        StartModel.Phase longest = phases(model()).stream()
                .max((a, b) -> Double.compare(a.duration(), b.duration()))
                .orElseThrow();
        return OperatingState.of(OperatingState.ENGINE, longest.state(), longest.speed());
    }

    /** Whether any bypass valve acts on a candidate. */
    public boolean hasValve(BuiltCandidate candidate) {
        return new StateModel(resolved.shared(), candidate.filter(), longestPhase()).hasValve();
    }

    /**
     * A start to be computed: shared model, candidate and start may each have an unknown moved.
     *
     * @param position of the candidate whose oil and metal the filter holds
     */
    public StartUpSpec spec(SharedModel shared, BuiltCandidate candidate, int position, StartModel model) {
        FilterAssembly filter = candidate.filter();
        StateModel mounted = new StateModel(shared, filter, OperatingState.of(OperatingState.ENGINE, "", 0));
        EngineCircuit circuit = mounted.circuit().orElseThrow();
        EngineModel engine = shared.engine().orElseThrow();
        HoldUp holdUp = model.holdUps().get(position);
        boolean dome = filter.elementValve().isPresent() && filter.elementValveLocation() == BypassLocation.DOME;
        StartModel.Heat heat = model.heat();
        ThermalModel thermal = new ThermalModel(
                heat.oilVolume() * shared.oil().at(model.filledAt()).density(),
                heat.metalHeatCapacity(),
                holdUp.oilVolume(),
                holdUp.solidHeat(),
                dome ? model.domeFlush() : 0,
                heat.oilToMetal(),
                heat.oilToMetalSpeed() * engine.pumpTurns(),
                heat.oilToAmbient(),
                heat.metalToAmbient(),
                model.ambient(),
                heat.coolant());
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
                model.metalFrom(),
                model.galleryVolume(),
                model.hot(),
                schedule.duration(),
                StartUpSpec.USUAL_TOLERANCE);
    }
}
