package org.coldpleat.model.circuit;

import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Flow and film temperature of the bearings from their heat balance,
 * {@code (rho cp q + UA)(T_out - T) = mu(T_film) S omega^2 + p q}, {@code T_film = T + f (T_out - T)},
 * {@code q = p C/mu(T_film) + q_side}. Work object of one thread; keeps its last film as the next start.
 */
@Source("steady energy balance of the oil in the bearings; derived here")
@Validity("films up to 600 K; beyond, the film stays at 600 K and the balance is reported as not met")
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
    private double temperature;
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
    }

    /** Oil from a sump [K] at a speed [rev/s]; keeps the last film as a start. */
    void enter(double sumpTemperature, Fluid sump, double speed) {
        temperature = sumpTemperature;
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
        excess = Math.max(0, hotter);
    }

    /** Relative miss [1] of the heat balance before the last step; 0 for films as cold as the sump. */
    double miss() {
        return heat == 0 ? 0 : Math.abs(missing) / heat;
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
        if (exact || !(expected >= 0 && expected < HOTTEST - temperature) || !stepped(expected, pressure, sideFlow)) {
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
        BracketedNewton newton = new BracketedNewton(0, Math.max(0, HOTTEST - temperature), expected);
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
        double position = bearings.filmPosition();
        flow = pressure * conductance + sideFlow;
        double carried = (heatCapacity * flow + bearings.heatLoss()) / position;
        heat = viscosity * frictionRate + pressure * flow;
        missing = heat - carried * excess;
        flowByExcess = -pressure * conductance * logSlope;
        double lead = heatCapacity * excess / position - pressure;
        missByExcess = viscosity * logSlope * frictionRate - carried - lead * flowByExcess;
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
