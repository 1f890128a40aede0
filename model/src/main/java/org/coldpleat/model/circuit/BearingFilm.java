package org.coldpleat.model.circuit;

import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Flow and film temperature of the bearings from their heat balance,
 * {@code T_film = T + A [U (T_metal - T) + mu(T_film) S omega^2 + p q]}, {@code q = p C/mu(T_film) + q_side}, with A from
 * {@link FilmExchange}. Work object of one thread; keeps its last film as the next start.
 */
@Source("steady energy balance of the oil in the bearings; derived here")
@Validity(
        "films up to 600 K; beyond, the film stays at 600 K and the balance is reported as not met. One film temperature with"
                + " oil up to about 35 K warmer than the metal; beyond, a cold and a warm film can both exist, and the one nearest to"
                + " the last is found")
final class BearingFilm {
    /** Hottest film looked for [K]. */
    static final double HOTTEST = 600;

    private static final double DIFFERENCE = 0.02;

    /** Change of the film temperature from which the slope of the viscosity is taken anew [K]. */
    private static final double LEAP = 4;

    /** Change of the film temperature from which two films give the slope of the viscosity [K]. */
    private static final double APART = 1e-4;

    private static final int MAX_STEPS = 60;

    private final Bearings bearings;
    private final Lubricant lubricant;
    private final FilmExchange exchange;
    private double temperature;
    private double metalExcess;
    private double heatCapacity;
    private double frictionRate;
    private double sumpViscosity;

    private double excess;
    private double seen;
    private double logSlope = Double.NaN;
    private boolean fresh = true;
    private double lastPressure = Double.NaN;
    private double excessByPressure;
    private double heat;
    private double missing;
    private double missByExcess;
    private double conductance;
    private double flowByExcess;
    private double missByPressure;

    double flow;
    double flowSlope;
    double viscosity;
    boolean converged;

    BearingFilm(Bearings bearings, Lubricant lubricant) {
        this.bearings = bearings;
        this.lubricant = lubricant;
        exchange = new FilmExchange(bearings.metalConductance(), bearings.filmPosition());
    }

    /** Oil from a sump [K] at a speed [rev/s] into metal [K]; keeps the last film as a start. */
    void enter(double sumpTemperature, Fluid sump, double speed, double metalTemperature) {
        temperature = sumpTemperature;
        metalExcess = metalTemperature - sumpTemperature;
        sumpViscosity = sump.dynamicViscosity();
        heatCapacity = bearings.isWarm() ? sump.density() * lubricant.heatCapacity(temperature) : 0;
        double omega = 2 * Math.PI * speed;
        frictionRate = bearings.friction() * omega * omega;
        viscosity = sumpViscosity;
        lastPressure = Double.NaN;
        fresh = true;
    }

    double filmTemperature() {
        return temperature + excess;
    }

    /** Starts from films hotter than the sump by this [K]. */
    void startAt(double hotter) {
        excess = hotter;
    }

    /** Relative miss [1] of the heat balance before the last step; 0 for films as cold as the sump. */
    double miss() {
        return heat == 0 ? 0 : Math.abs(missing) / heat;
    }

    /** Heat that the films give to the metal [W], below 0 where the metal warms them. */
    double toMetal() {
        double pull = bearings.metalConductance() * metalExcess;
        return bearings.isWarm() ? excess * (exchange.carried - heatCapacity * flow * exchange.outlet) - pull : 0;
    }

    /** Coldest film there can be, over the sump [K]. */
    private double coldest() {
        return Math.min(0, metalExcess);
    }

    /**
     * Looks at the film at a pressure [Pa] with a side flow [m3/s].
     *
     * @param exact true to find it to rounding; false to move one step
     */
    void look(double pressure, double sideFlow, boolean exact) {
        converged = true;
        if (!bearings.isWarm()) {
            flow = pressure * bearings.conductance() / sumpViscosity + sideFlow;
            flowSlope = bearings.conductance() / sumpViscosity;
            return;
        }
        double expected = Double.isNaN(lastPressure) ? excess : excess + excessByPressure * (pressure - lastPressure);
        if (exact
                || !(expected >= coldest() && expected < HOTTEST - temperature)
                || !stepped(expected, pressure, sideFlow)) {
            search(expected, pressure, sideFlow);
        }
        lastPressure = pressure;
    }

    private boolean stepped(double expected, double pressure, double sideFlow) {
        balance(expected, pressure, sideFlow);
        if (!(miss() <= DropFollower.FAR)) {
            return false;
        }
        double step = -missing / missByExcess;
        excess += step;
        flow += flowByExcess * step;
        slopes();
        return true;
    }

    private void search(double expected, double pressure, double sideFlow) {
        BracketedNewton newton = new BracketedNewton(coldest(), Math.max(0, HOTTEST - temperature), expected);
        for (int i = 0; ; i++) {
            balance(newton.point(), pressure, sideFlow);
            boolean met = Math.abs(missing) <= 1e-13 * heat || newton.isExhausted();
            if (met || i == MAX_STEPS) {
                converged = met && excess < HOTTEST - temperature;
                slopes();
                return;
            }
            newton.step(missing, Math.min(missByExcess, -Double.MIN_NORMAL));
        }
    }

    private void balance(double next, double pressure, double sideFlow) {
        double moved = next - seen;
        double viscosityBefore = viscosity;
        seen = next;
        excess = next;
        viscosity = lubricant.at(temperature + excess).dynamicViscosity();
        updateLogSlope(moved, viscosityBefore);
        conductance = bearings.conductance() / viscosity;
        flow = pressure * conductance + sideFlow;
        exchange.at(heatCapacity * flow);
        double pull = bearings.metalConductance() * metalExcess;
        double freed = viscosity * frictionRate + pressure * flow;
        heat = freed + Math.abs(pull);
        missing = freed + pull - exchange.carried * excess;
        flowByExcess = -pressure * conductance * logSlope;
        double lead = heatCapacity * exchange.slope * excess - pressure;
        missByExcess = viscosity * logSlope * frictionRate - exchange.carried - lead * flowByExcess;
        missByPressure = flow - lead * conductance;
    }

    private void slopes() {
        excessByPressure = -missByPressure / missByExcess;
        flowSlope = conductance + flowByExcess * excessByPressure;
    }

    /** Slope of ln(mu) over temperature [1/K]: by difference at first and after a leap, then from two films if apart. */
    private void updateLogSlope(double moved, double viscosityBefore) {
        if (Double.isNaN(logSlope) || (!fresh && Math.abs(moved) >= LEAP)) {
            double ahead = lubricant.at(temperature + excess + DIFFERENCE).dynamicViscosity();
            logSlope = Math.log(ahead / viscosity) / DIFFERENCE;
        } else if (!fresh && Math.abs(moved) > APART) {
            logSlope = Math.log(viscosity / viscosityBefore) / moved;
        }
        fresh = false;
    }
}
