package org.coldpleat.model.coldstart;

import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.thermal.Coolant;
import org.coldpleat.model.thermal.TemperatureTrace;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.model.valve.SpringValve;

/**
 * Engine, filter and heat as one set of rates of change. Holds the phase and, through its hydraulics, the discrete state;
 * used by one thread.
 */
final class StartEquations {
    static final int OIL = 0;
    static final int METAL = 1;
    static final int ELEMENT = 2;
    static final int COOLANT = 3;
    static final int PUMPED = 4;
    static final int FILTERED = 5;
    static final int UNFILTERED = 6;
    static final int PUMP_WORK = 7;
    static final int FILM = 8;
    static final int OIL_LOSS = 9;
    static final int METAL_LOSS = 10;
    static final int COOLANT_LOSS = 11;
    static final int SIZE = 12;

    /** Oil hotter than this [K] is no start any more. */
    private static final double HOTTEST = 600;
    /** How far below every given temperature a trial state may go [K]. */
    private static final double BELOW = 5;

    final StartUpSpec spec;
    private final Lubricant lubricant;
    private final ThermalModel heat;
    private final double elementOilMass;
    private final double coldest;
    private final StartHydraulics hydraulics;
    private StartPhase phase;

    StartEquations(StartUpSpec spec) {
        this.spec = spec;
        lubricant = spec.engine().lubricant();
        hydraulics = new StartHydraulics(spec);
        heat = spec.thermal();
        elementOilMass =
                heat.elementVolume() * lubricant.at(spec.startTemperature()).density();
        double logged = spec.trace().map(TemperatureTrace::lowest).orElse(spec.startTemperature());
        coldest = Math.min(Math.min(spec.startTemperature(), spec.metalTemperature()), Math.min(heat.ambient(), logged))
                - BELOW;
        phase = spec.schedule().phases().get(0);
    }

    double[] initialState() {
        double[] y = new double[SIZE];
        y[OIL] = spec.trace().map(trace -> trace.at(0)).orElse(spec.startTemperature());
        y[METAL] = spec.metalTemperature();
        y[COOLANT] = spec.metalTemperature();
        y[ELEMENT] = heat.hasHoldUp() ? spec.startTemperature() : y[OIL];
        return y;
    }

    /** The circuit and what is discrete about it. */
    StartHydraulics hydraulics() {
        return hydraulics;
    }

    StartPhase phase() {
        return phase;
    }

    void enter(StartPhase other) {
        phase = other;
        hydraulics.turn(other.speed());
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
            throw new StartFailure("temperature");
        }
    }

    /** Circuit and filter at a time [s] and state. */
    StartHydraulics.Moment at(double time, double[] y) {
        return hydraulics.at(oil(time, y), element(time, y), plausible(y[METAL]));
    }

    /** Time over which the pressure across a valve is followed to see whether it rises [s]. */
    private static final double AHEAD = 1e-3;

    /** Change of the pressure across a valve in that time, over the pressure, from which it rises for certain [1]. */
    private static final double RISING = 1e-9;

    /** Change of the pressure across a valve a moment ahead, over that pressure [1]. */
    double rise(double time, double[] y, int valve) {
        double[] rates = rates(time, y);
        double[] ahead = y.clone();
        for (int i = 0; i < PUMPED; i++) {
            ahead[i] += AHEAD * rates[i];
        }
        return at(time + AHEAD, ahead).difference(valve) / at(time, y).difference(valve) - 1;
    }

    /** Whether a lid with friction is on its way up; where the pressure turns, friction holds it. */
    boolean isRising(double time, double[] y, int valve) {
        return hydraulics.isOpen(valve)
                && hydraulics.valve(valve).filter(SpringValve::hasFriction).isPresent()
                && rise(time, y, valve) > RISING;
    }

    /** Rates of change of all components at a time [s]. */
    double[] rates(double time, double[] y) {
        StartHydraulics.Moment moment = at(time, y);
        OperatingPoint point = moment.point();
        double oil = oil(time, y);
        double metal = y[METAL];
        double element = element(time, y);
        double density = moment.sump().density();
        double capacity = lubricant.heatCapacity(oil);

        double pumpWork = point.pumpPressure() * point.pumpFlow();
        double friction = 0;
        double filmToMetal = 0;
        if (!hydraulics.isFilling() && point.bearingFlow() > 0) {
            Bearings bearings = spec.engine().gallery().bearings();
            double omega = 2 * Math.PI * phase.speed();
            friction = lubricant.at(point.filmTemperature()).dynamicViscosity() * bearings.friction() * omega * omega;
            filmToMetal = point.filmToMetal();
        }
        double exchange = heat.metalToOilAt(phase.speed()) * (metal - oil);
        double oilLoss = heat.oilLoss() * (oil - heat.ambient());
        double metalLoss = heat.metalLoss() * (metal - heat.ambient());
        double flush = moment.mediumFlow() + heat.bypassFlush() * moment.elementBypass();
        double toElement = 0;

        double[] rate = new double[SIZE];
        if (heat.hasHoldUp()) {
            double mean = lubricant.heatCapacity(0.5 * (oil + element));
            toElement = density * flush * mean * (oil - element);
            double held = elementOilMass * lubricant.heatCapacity(element) + heat.elementHeatCapacity();
            rate[ELEMENT] = toElement / held;
        }
        double combustion = phase.heatToMetal();
        double fromCoolant = 0;
        if (heat.coolant().isPresent()) {
            Coolant coolant = heat.coolant().get();
            double taken = coolant.combustionShare() * combustion + coolant.toMetal() * (metal - y[COOLANT]);
            double loss = coolant.loss(y[COOLANT], heat.ambient());
            fromCoolant = coolant.toOil() * (y[COOLANT] - oil);
            rate[COOLANT] = (taken - fromCoolant - loss) / coolant.heatCapacity();
            rate[COOLANT_LOSS] = loss;
            combustion -= taken;
        }
        double intoOil =
                pumpWork + friction - filmToMetal + phase.heatToOil() + exchange + fromCoolant - oilLoss - toElement;
        rate[OIL] = spec.trace().isPresent() ? spec.trace().get().rate(time) : intoOil / (heat.oilMass() * capacity);
        rate[METAL] = (combustion + filmToMetal - exchange - metalLoss) / heat.metalHeatCapacity();
        rate[PUMPED] = point.pumpFlow();
        rate[FILTERED] = moment.mediumFlow();
        rate[UNFILTERED] = moment.bypassFlow();
        rate[PUMP_WORK] = pumpWork;
        rate[FILM] = friction;
        rate[OIL_LOSS] = oilLoss;
        rate[METAL_LOSS] = metalLoss;
        return rate;
    }

    /** Change of enthalpy of the masses between two states [J]: oil, metal, coolant, element. */
    double[] stored(double[] from, double[] to) {
        double metal = heat.metalHeatCapacity() * (to[METAL] - from[METAL]);
        double element = heat.hasHoldUp()
                ? elementOilMass * enthalpy(from[ELEMENT], to[ELEMENT])
                        + heat.elementHeatCapacity() * (to[ELEMENT] - from[ELEMENT])
                : 0;
        double coolant = heat.coolant()
                .map(one -> one.heatCapacity() * (to[COOLANT] - from[COOLANT]))
                .orElse(0.0);
        return new double[] {heat.oilMass() * enthalpy(from[OIL], to[OIL]), metal, coolant, element};
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
