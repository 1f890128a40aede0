package org.coldpleat.model.coldstart;

import java.util.Arrays;
import java.util.Optional;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.thermal.TemperatureTrace;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.model.valve.SpringValve;

/**
 * Engine, filter and heat as one set of rates of change. Holds the discrete state (phase, filling or connected, valves
 * held open) and the last circuit solutions; used by one thread.
 */
final class StartEquations {
    static final int OIL = 0;
    static final int METAL = 1;
    static final int ELEMENT = 2;
    static final int PUMPED = 3;
    static final int FILTERED = 4;
    static final int UNFILTERED = 5;
    static final int PUMP_WORK = 6;
    static final int FILM = 7;
    static final int OIL_LOSS = 8;
    static final int METAL_LOSS = 9;
    static final int SIZE = 10;

    /** Circuit, filter and oil of the sump at one moment. */
    record Moment(OperatingPoint point, FilterState filter, Fluid sump) {
        /** Difference across the element's valve (0) or the block's (1) [Pa]. */
        double difference(int valve) {
            return (valve == 0 ? filter.elementValve() : filter.blockValve()).pressureDifference();
        }
    }

    /** The circuit has no operating point where the integration wants one. */
    static final class NotSolved extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotSolved(String status) {
            super(status, null, false, false);
        }
    }

    private static final int KEPT = 4;
    /** Oil hotter than this [K] is no start any more. */
    private static final double HOTTEST = 600;
    /** How far below every given temperature a trial state may go [K]. */
    private static final double BELOW = 5;

    final StartUpSpec spec;
    private final Lubricant lubricant;
    private final ThermalModel heat;
    private final double elementOilMass;
    private final double coldest;
    private final FilterAssembly[] filters = new FilterAssembly[4];
    private final boolean[] open = new boolean[2];
    private final EngineCircuit engine;

    private boolean filling;
    private StartPhase phase;

    private final double[] keptOil = new double[KEPT];
    private final double[] keptElement = new double[KEPT];
    private final Moment[] kept = new Moment[KEPT];
    private int next;

    StartEquations(StartUpSpec spec) {
        this.spec = spec;
        engine = spec.engine();
        lubricant = engine.lubricant();
        heat = spec.thermal();
        elementOilMass =
                heat.elementVolume() * lubricant.at(spec.startTemperature()).density();
        double logged = spec.trace().map(TemperatureTrace::lowest).orElse(spec.startTemperature());
        coldest = Math.min(Math.min(spec.startTemperature(), heat.ambient()), logged) - BELOW;
        filling = spec.galleryVolume() > 0;
        phase = spec.schedule().phases().get(0);
        FilterAssembly shut = spec.filter();
        FilterAssembly both = shut.afterOpening();
        filters[0] = shut;
        filters[1] = both.elementValve()
                .map(v -> shut.withBypass(shut.elementValveLocation(), v))
                .orElse(shut);
        filters[2] = both.blockValve()
                .map(v -> shut.withBypass(BypassLocation.BLOCK, v))
                .orElse(shut);
        filters[3] = both;
    }

    double[] initialState() {
        double[] y = new double[SIZE];
        y[OIL] = spec.trace().map(trace -> trace.at(0)).orElse(spec.startTemperature());
        y[METAL] = spec.startTemperature();
        y[ELEMENT] = heat.hasHoldUp() ? spec.startTemperature() : y[OIL];
        return y;
    }

    boolean isFilling() {
        return filling;
    }

    void connect() {
        filling = false;
        forget();
    }

    StartPhase phase() {
        return phase;
    }

    void enter(StartPhase other) {
        phase = other;
        forget();
    }

    boolean isOpen(int valve) {
        return open[valve];
    }

    boolean isAnyOpen() {
        return open[0] || open[1];
    }

    /** Marks a valve as opened or shut. */
    void mark(int valve, boolean nowOpen) {
        open[valve] = nowOpen;
        forget();
    }

    /** Valve of the element (0) or the block (1) as it is now, held open by friction or not. */
    Optional<SpringValve> valve(int which) {
        FilterAssembly now = filter();
        return which == 0 ? now.elementValve() : now.blockValve();
    }

    private FilterAssembly filter() {
        return filters[(open[0] ? 1 : 0) + (open[1] ? 2 : 0)];
    }

    private void forget() {
        Arrays.fill(kept, null);
    }

    double oil(double time, double[] y) {
        return spec.trace().isPresent() ? spec.trace().get().at(time) : plausible(y[OIL]);
    }

    double element(double time, double[] y) {
        return heat.hasHoldUp() ? plausible(y[ELEMENT]) : oil(time, y);
    }

    /** Keeps the trial states of a step where the oil has laws; states that are accepted need no keeping. */
    private double plausible(double temperature) {
        return Math.min(Math.max(temperature, coldest), HOTTEST);
    }

    /** Throws if an accepted state lies where only trial states may. */
    void requirePlausible(double[] y) {
        if (plausible(y[OIL]) != y[OIL] || plausible(y[ELEMENT]) != y[ELEMENT]) {
            throw new NotSolved("temperature");
        }
    }

    /** Circuit and filter at a time [s] and state. */
    Moment at(double time, double[] y) {
        double oil = oil(time, y);
        double element = element(time, y);
        for (int i = 0; i < KEPT; i++) {
            if (kept[i] != null && keptOil[i] == oil && keptElement[i] == element) {
                return kept[i];
            }
        }
        Moment moment = solve(oil, element);
        kept[next] = moment;
        keptOil[next] = oil;
        keptElement[next] = element;
        next = (next + 1) % KEPT;
        return moment;
    }

    /** Depends on the state alone, not on what was solved before: a search for an event asks for a moment again and again. */
    private Moment solve(double oil, double element) {
        if (Double.isNaN(oil + element)) {
            throw new NotSolved("temperature");
        }
        Fluid sump = lubricant.at(oil);
        Fluid held = element == oil ? sump : lubricant.at(element);
        FilterAssembly filter = filter();
        OperatingPoint point = filling
                ? FillStage.solve(engine, filter.law(held), phase.speed(), oil)
                : engine.withFilter(filter.law(held)).solve(phase.speed(), oil);
        if (!point.status().isAnswer()) {
            throw new NotSolved(point.status().name());
        }
        FilterState inside = filter.solve(point.filterFlow(), sump, held);
        if (!inside.converged()) {
            throw new NotSolved("filter");
        }
        return new Moment(point, inside, sump);
    }

    /** Rates of change of all components at a time [s]. */
    double[] rates(double time, double[] y) {
        Moment moment = at(time, y);
        OperatingPoint point = moment.point();
        FilterState filter = moment.filter();
        double oil = oil(time, y);
        double metal = y[METAL];
        double element = element(time, y);
        double density = moment.sump().density();
        double capacity = lubricant.heatCapacity(oil);

        double pumpWork = point.pumpPressure() * point.pumpFlow();
        double friction = 0;
        double filmToMetal = 0;
        if (!filling && point.bearingFlow() > 0) {
            Bearings bearings = engine.gallery().bearings();
            double omega = 2 * Math.PI * phase.speed();
            friction = lubricant.at(point.filmTemperature()).dynamicViscosity() * bearings.friction() * omega * omega;
            double loss = bearings.heatLoss();
            double carried = density * capacity * point.bearingFlow();
            double freed = friction + point.bearingPressure() * point.bearingFlow();
            filmToMetal = loss == 0 ? 0 : freed * loss / (carried + loss);
        }
        double exchange = heat.metalToOil() * (metal - oil);
        double oilLoss = heat.oilLoss() * (oil - heat.ambient());
        double metalLoss = heat.metalLoss() * (metal - heat.ambient());
        double flush =
                filter.mediumFlow() + heat.bypassFlush() * filter.elementValve().flowRate();
        double toElement = 0;

        double[] rate = new double[SIZE];
        if (heat.hasHoldUp()) {
            double mean = lubricant.heatCapacity(0.5 * (oil + element));
            toElement = density * flush * mean * (oil - element);
            double held = elementOilMass * lubricant.heatCapacity(element) + heat.elementHeatCapacity();
            rate[ELEMENT] = toElement / held;
        }
        double intoOil = pumpWork + friction - filmToMetal + phase.heatToOil() + exchange - oilLoss - toElement;
        rate[OIL] = spec.trace().isPresent() ? spec.trace().get().rate(time) : intoOil / (heat.oilMass() * capacity);
        rate[METAL] = (phase.heatToMetal() + filmToMetal - exchange - metalLoss) / heat.metalHeatCapacity();
        rate[PUMPED] = point.pumpFlow();
        rate[FILTERED] = filter.mediumFlow();
        rate[UNFILTERED] = filter.bypassFlow();
        rate[PUMP_WORK] = pumpWork;
        rate[FILM] = friction;
        rate[OIL_LOSS] = oilLoss;
        rate[METAL_LOSS] = metalLoss;
        return rate;
    }

    /** Change of enthalpy of the three masses between two states [J]: oil, metal, element. */
    double[] stored(double[] from, double[] to) {
        double metal = heat.metalHeatCapacity() * (to[METAL] - from[METAL]);
        double element = heat.hasHoldUp()
                ? elementOilMass * enthalpy(from[ELEMENT], to[ELEMENT])
                        + heat.elementHeatCapacity() * (to[ELEMENT] - from[ELEMENT])
                : 0;
        return new double[] {heat.oilMass() * enthalpy(from[OIL], to[OIL]), metal, element};
    }

    /** Integral of the heat capacity over temperature [J/kg], Simpson's rule. */
    private double enthalpy(double from, double to) {
        int panels = 64;
        double h = (to - from) / panels;
        double sum = lubricant.heatCapacity(from) + lubricant.heatCapacity(to);
        for (int i = 1; i < panels; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * lubricant.heatCapacity(from + i * h);
        }
        return sum * h / 3;
    }
}
