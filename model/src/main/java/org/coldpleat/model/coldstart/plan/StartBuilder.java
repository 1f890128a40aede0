package org.coldpleat.model.coldstart.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.thermal.Coolant;
import org.coldpleat.model.thermal.TemperatureTrace;
import org.coldpleat.shared.casefile.LoggedTemperature;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Makes the start of a case. */
final class StartBuilder {
    /** Oil temperature that counts as hot if none is stated [K]: 80 degrees C. */
    private static final double COMMON_HOT = 353.15;

    /** Specific heat of engine metal, iron and aluminum in equal shares of mass [J/(kg K)]. */
    @Source("specific heats at 25 degrees C: iron 449, aluminum 897 J/(kg K); CRC Handbook of Chemistry and Physics")
    private static final double METAL_HEAT = (449 + 897) / 2.0;

    /** Ranges of an engine's heat data for each volume of oil: per liter, in SI of the kind. */
    @Source("common practice, no source: engines of 1 to 6 L with 3 to 12 L of oil")
    private static final Map<String, double[]> TYPICAL_PER_LITER = Map.of(
            "metalHeatCapacity", new double[] {6e3, 16e3},
            "oilToMetal", new double[] {5, 30},
            "metalToAmbient", new double[] {6, 25},
            "oilToAmbient", new double[] {0.4, 2.5});

    private static final double LITER = 1e-3;

    /** Thermostat begins to open [K], 82 degrees C, and takes so much to be open [K]. */
    @Source("workshop manuals, from notes: opens at 82 to 90, open at 95 to 105 degrees C")
    private static final double THERMOSTAT_OPENS = 355.15;

    private static final double THERMOSTAT_WAY = 13;

    /** Share of the room inside a can that oil fills [1]. */
    @Source("common practice, no source: steel, medium and caps take 10 to 20 %")
    private static final Measured OIL_IN_CAN = Measured.between(Kind.FRACTION, 0.8, 0.9, Provenance.TYPICAL);

    /** Share of the flow of a dome valve that flushes the can on its way through the annulus [1]. */
    @Source("derived here: none of it mixes, or all of it")
    private static final Measured DOME_FLUSH = Measured.between(Kind.FRACTION, 0, 1, Provenance.TYPICAL);

    private final ResolvedCase resolved;
    private final Section start;
    private final Map<String, Double> moved;
    private final Inputs inputs;
    private final Map<String, Unknown> unknowns = new LinkedHashMap<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    private StartBuilder(ResolvedCase resolved, Section start, Map<String, Double> moved) {
        this.resolved = resolved;
        this.start = start;
        this.moved = moved;
        inputs = Inputs.shared().moving(moved);
    }

    /**
     * A start and what there is to say about its data.
     *
     * @param model computing form
     * @param notices findings
     * @param unknowns what was uncertain, by path
     * @param assumptions typical, guessed and stand-in values
     */
    record Built(StartModel model, List<Notice> notices, Map<String, Unknown> unknowns, List<Assumption> assumptions) {
        Built {
            notices = List.copyOf(notices);
            unknowns = Collections.unmodifiableMap(new LinkedHashMap<>(unknowns));
            assumptions = List.copyOf(assumptions);
        }
    }

    /**
     * Makes the start of a case that has one.
     *
     * @param moved path to value [SI] of unknowns to be moved
     */
    static Built start(ResolvedCase resolved, Map<String, Double> moved) {
        Section start = resolved.document().root().section("start").orElseThrow();
        return new StartBuilder(resolved, start, moved).build();
    }

    private Built build() {
        double from = inputs.valueOr(start, "from", resolved.coldestNamed());
        double metalFrom = inputs.valueOr(start, "metalFrom", from);
        double ambient = inputs.valueOr(start, "ambient", from);
        double hot = inputs.valueOr(start, "hot", COMMON_HOT);
        double gallery = inputs.valueOr(start, "galleryVolume", 0);
        Optional<TemperatureTrace> trace = trace();
        Optional<Section> thermal = start.section("thermal");
        StartModel.Heat heat = trace.isPresent() || thermal.isEmpty() ? ofLog() : heat(thermal.get());
        HeatTable heats =
                trace.isPresent() ? HeatTable.NONE : thermal.map(this::heats).orElse(HeatTable.NONE);
        Map<String, List<StartModel.Phase>> schedules = new LinkedHashMap<>();
        for (Section schedule : start.sections("schedules")) {
            schedules.put(
                    schedule.text("name").orElseThrow(),
                    schedule.sections("phases").stream()
                            .map(phase -> phase(phase, heats, trace.isPresent()))
                            .toList());
        }
        boolean heated = schedules.values().stream()
                .flatMap(List::stream)
                .anyMatch(phase -> phase.toMetal() > 0 || phase.toOil() > 0);
        if (trace.isEmpty() && !heated) {
            notices.add(Notice.of("start.noCombustion", Severity.WARNING, "start"));
        }
        heat.coolant()
                .filter(coolant -> schedules.values().stream()
                        .flatMap(List::stream)
                        .anyMatch(phase -> !coolant.holds(phase.toMetal() + phase.toOil(), ambient)))
                .ifPresent(coolant -> notices.add(Notice.of("start.overheats", Severity.CAUTION, "start")));
        boolean dome = resolved.candidates().stream()
                .anyMatch(one -> one.filter().elementValve().isPresent()
                        && one.filter().elementValveLocation() == BypassLocation.DOME);
        // a share; the spread of a stated one may reach past the whole
        double flush = dome ? Math.min(1, shareOr("domeFlush", DOME_FLUSH)) : 0;
        List<HoldUp> holdUps = holdUps();
        unknowns.putAll(inputs.unknowns());
        assumptions.addAll(0, inputs.assumptions());
        StartModel model = new StartModel(
                from, metalFrom, from, ambient, hot, gallery, heat, heats, schedules, trace, flush, holdUps);
        return new Built(model, notices, unknowns, assumptions);
    }

    private double shareOr(String key, Measured typical) {
        return start.has(key) && !start.typicalAsked(key)
                ? inputs.value(start, key).orElseThrow()
                : inputs.assumed(start.pathOf(key), typical, "assumption." + key)
                        .value();
    }

    private List<HoldUp> holdUps() {
        double share = Math.min(1, shareOr("oilInCan", OIL_IN_CAN));
        List<Section> sheets = resolved.document().root().sections("candidates");
        List<HoldUp> found = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            Inputs own = Inputs.ofCandidate(i).moving(moved);
            HoldUp holdUp = HoldUpBuilder.of(sheets.get(i), share, own);
            if (holdUp.oilVolume() == 0) {
                String name = resolved.candidates().get(i).name();
                notices.add(Notice.of("start.noHoldUp", Severity.WARNING, name));
            }
            unknowns.putAll(own.unknowns());
            assumptions.addAll(own.assumptions());
            found.add(holdUp);
        }
        return found;
    }

    private Optional<TemperatureTrace> trace() {
        List<LoggedTemperature> log = resolved.document().startTrace();
        return log.isEmpty()
                ? Optional.empty()
                : Optional.of(new TemperatureTrace(
                        log.stream().mapToDouble(LoggedTemperature::time).toArray(),
                        log.stream().mapToDouble(LoggedTemperature::temperature).toArray()));
    }

    /** Stands where a logged temperature makes the oil's balance idle; no number of it is used. */
    private static StartModel.Heat ofLog() {
        return new StartModel.Heat(LITER, 1, 0, 0, 0, 0, Optional.empty());
    }

    private StartModel.Heat heat(Section thermal) {
        double oil = inputs.value(thermal, "oilVolume").orElseThrow();
        double metal = thermal.has("metalMass")
                ? METAL_HEAT * inputs.value(thermal, "metalMass").orElseThrow()
                : valueOrTypical(thermal, "metalHeatCapacity", Kind.HEAT_CAPACITY, oil);
        return new StartModel.Heat(
                oil,
                metal,
                valueOrTypical(thermal, "oilToMetal", Kind.HEAT_CONDUCTANCE, oil),
                valueOrTypical(thermal, "metalToAmbient", Kind.HEAT_CONDUCTANCE, oil),
                valueOrTypical(thermal, "oilToAmbient", Kind.HEAT_CONDUCTANCE, oil),
                inputs.valueOr(thermal, "oilToMetalSpeed", 0),
                thermal.section("coolant").map(this::coolant));
    }

    private Coolant coolant(Section section) {
        double opens = inputs.valueOr(section, "opens", THERMOSTAT_OPENS);
        return new Coolant(
                inputs.value(section, "heatCapacity").orElseThrow(),
                Math.min(1, inputs.valueOr(section, "combustionShare", 1)),
                inputs.value(section, "toMetal").orElseThrow(),
                inputs.valueOr(section, "toOil", 0),
                inputs.value(section, "radiator").orElseThrow(),
                opens,
                opens + THERMOSTAT_WAY);
    }

    /** A value as stated; where it is asked for or left out, a typical one stands in. */
    private double valueOrTypical(Section thermal, String key, Kind kind, double oil) {
        if (thermal.has(key) && !thermal.typicalAsked(key)) {
            return inputs.value(thermal, key).orElseThrow();
        }
        double[] range = TYPICAL_PER_LITER.get(key);
        double liters = oil / LITER;
        Measured typical = Measured.between(kind, range[0] * liters, range[1] * liters, Provenance.TYPICAL);
        boolean asked = thermal.typicalAsked(key);
        if (!asked) {
            notices.add(Notice.of("start.leftOut", Severity.WARNING, "start", key));
        }
        return inputs.assumed(
                        thermal.pathOf(key), typical, asked ? "assumption.typicalHeat" : "assumption.typicalHeatNeeded")
                .value();
    }

    private HeatTable heats(Section thermal) {
        return new HeatTable(thermal.sections("heats").stream()
                .map(heat -> new HeatTable.Point(
                        speed(heat), inputs.valueOr(heat, "toMetal", 0), inputs.valueOr(heat, "toOil", 0)))
                .filter(point -> point.speed() > 0)
                .sorted(Comparator.comparingDouble(HeatTable.Point::speed))
                .toList());
    }

    private StartModel.Phase phase(Section phase, HeatTable heats, boolean traced) {
        double speed = speed(phase);
        HeatTable.Point heat = heats.at(speed);
        return new StartModel.Phase(
                phase.text("state").orElse(""),
                speed,
                inputs.value(phase, "duration").orElseThrow(),
                traced ? 0 : inputs.valueOr(phase, "heatToMetal", heat.toMetal()),
                traced ? 0 : inputs.valueOr(phase, "heatToOil", heat.toOil()));
    }

    private double speed(Section section) {
        return section.text("state")
                .map(name -> resolved.operatingStates().stream()
                        .filter(duty -> duty.isEngine() && duty.name().equals(name))
                        .findFirst()
                        .orElseThrow()
                        .drive())
                .orElseGet(() -> inputs.value(section, "speed").orElseThrow());
    }
}
