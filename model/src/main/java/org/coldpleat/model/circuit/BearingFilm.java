package org.coldpleat.model.circuit;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Flow and film temperature of the bearings from their heat balance,
 * {@code (rho cp q + UA)(T_out - T) = mu(T_film) S omega^2 + p q}, {@code T_film = T + f (T_out - T)},
 * {@code q = p C/mu(T_film) + q_side}. Work object of one solve; keeps its last film as the next start.
 */
@Source("steady energy balance of the oil in the bearings; derived here")
@Validity("films up to 600 K; beyond, the film stays at 600 K and the balance is reported as not met")
final class BearingFilm {
    /** Hottest film looked for [K]. */
    static final double HOTTEST = 600;

    private static final double DIFFERENCE = 0.02;

    /** Change of the film temperature from which the slope of the viscosity is taken anew [K]. */
    private static final double LEAP = 1;

    private static final int MAX_STEPS = 60;

    private final Bearings bearings;
    private final Lubricant lubricant;
    private final double temperature;
    private final double heatCapacity;
    private final double frictionRate;
    private final double sumpViscosity;

    private double excess;
    private double logSlope = Double.NaN;
    private double lastPressure = Double.NaN;
    private double excessByPressure;

    double flow;
    double flowSlope;
    double viscosity;
    double residual;

    BearingFilm(Bearings bearings, Lubricant lubricant, double temperature, Fluid sump, double speed) {
        this.bearings = bearings;
        this.lubricant = lubricant;
        this.temperature = temperature;
        sumpViscosity = sump.dynamicViscosity();
        heatCapacity = bearings.isWarm() ? sump.density() * lubricant.heatCapacity(temperature) : 0;
        double omega = 2 * Math.PI * speed;
        frictionRate = bearings.friction() * omega * omega;
        viscosity = sumpViscosity;
    }

    double filmTemperature() {
        return temperature + excess;
    }

    /** Starts from a known film temperature [K]. */
    void startAt(double filmTemperature) {
        excess = Math.max(0, filmTemperature - temperature);
        lastPressure = Double.NaN;
    }

    /** Finds the film at a pressure [Pa] with a side flow [m3/s]. */
    void solve(double pressure, double sideFlow) {
        if (!bearings.isWarm()) {
            flow = pressure * bearings.conductance() / sumpViscosity + sideFlow;
            flowSlope = bearings.conductance() / sumpViscosity;
            return;
        }
        double pressureConductance = bearings.conductance();
        double position = bearings.filmPosition();
        double expected = Double.isNaN(lastPressure) ? excess : excess + excessByPressure * (pressure - lastPressure);
        BracketedNewton newton = new BracketedNewton(0, Math.max(0, HOTTEST - temperature), expected);
        for (int i = 0; ; i++) {
            double before = excess;
            double viscosityBefore = viscosity;
            excess = newton.point();
            viscosity = lubricant.at(temperature + excess).dynamicViscosity();
            updateLogSlope(excess - before, viscosityBefore);
            double conductance = pressureConductance / viscosity;
            flow = pressure * conductance + sideFlow;
            double carried = (heatCapacity * flow + bearings.heatLoss()) / position;
            double heat = viscosity * frictionRate + pressure * flow;
            double miss = heat - carried * excess;
            double flowByExcess = -pressure * conductance * logSlope;
            double lead = heatCapacity * excess / position - pressure;
            double missByExcess = viscosity * logSlope * frictionRate - carried - lead * flowByExcess;
            double missByPressure = flow - lead * conductance;
            boolean met = Math.abs(miss) <= 1e-13 * heat || newton.isExhausted();
            if (met || i == MAX_STEPS) {
                residual = heat == 0 ? 0 : Math.abs(miss) / heat;
                lastPressure = pressure;
                excessByPressure = -missByPressure / missByExcess;
                flowSlope = conductance + flowByExcess * excessByPressure;
                return;
            }
            newton.step(miss, Math.min(missByExcess, -Double.MIN_NORMAL));
        }
    }

    /** Slope of ln(mu) over temperature [1/K]: by difference at first and after a leap, then from two films if apart. */
    private void updateLogSlope(double moved, double viscosityBefore) {
        if (Double.isNaN(logSlope) || Math.abs(moved) >= LEAP) {
            double ahead = lubricant.at(temperature + excess + DIFFERENCE).dynamicViscosity();
            logSlope = Math.log(ahead / viscosity) / DIFFERENCE;
        } else if (Math.abs(moved) > DIFFERENCE) {
            logSlope = Math.log(viscosity / viscosityBefore) / moved;
        }
    }
}
