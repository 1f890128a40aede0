package org.coldpleat.model.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;

/**
 * Finds the steady state. Work object of one thread, which starts each solve from where the last one ended. Bearing
 * pressure, films and filter first settle together, one Newton step of all at a time; where that fails, the unknown is
 * followed within a bracket, with films and filter found exactly at each step.
 *
 * <p>The unknown is the pressure before the bearings (or, when the side flow cannot be met, the flow of the starved
 * gallery). Given it, gallery flow, gallery pressure, filter drop and pump pressure follow one from the other, and the
 * surplus {@code pump - reliefs - gallery} falls while the pressures rise. Ideal relief valves add the condition that no
 * sensed pressure exceeds its setting: with {@code v} the largest excess, the answer is the root of
 * {@code min(surplus, -v)}, and what is left of the surplus is the flow of the valve that holds.
 */
@Source("monotone network with one node unknown; derived here")
public final class CircuitSolver {
    private static final int MAX_STEPS = 200;
    private static final double TOLERANCE = 1e-13;
    private static final double ACCEPTED = 1e-9;

    /** Steps in which circuit, films and filter settle together before the bracketed search takes over. */
    private static final int JOINT_STEPS = 15;

    /** Where a relief valve that was shut is looked at first, over its setting [1]: beyond it the flows change fast. */
    private static final double JUST_OPEN = 1.02;

    private final EngineCircuit circuit;
    private final Gallery gallery;
    private final Relief[] reliefs;
    private final Restrictor[] restrictors;
    private final DropFollower filter;
    private final BearingFilm film;

    private double speed;
    private double temperature;
    private Fluid sump;
    private double viscosity;
    private double sideDemand;

    private SolveStatus status = SolveStatus.NO_FLOW;
    private boolean exact;
    private boolean starved;
    private double bearingPressure;
    private double sideFlow;
    private double restrictorFlow;
    private double galleryFlow;
    private double galleryPressure;
    private double drop;
    private double pumpPressure;
    private double pumpFlow;
    private double surplus;
    private double surplusSlope;
    private double untilRelief;
    private double excess;
    private double excessSlope;
    private int holding;
    private int stiffest;
    private int steps;

    CircuitSolver(EngineCircuit circuit, DropFollower filter) {
        this.circuit = circuit;
        this.filter = filter;
        gallery = circuit.gallery();
        reliefs = circuit.reliefs().toArray(Relief[]::new);
        restrictors = gallery.restrictors().toArray(Restrictor[]::new);
        film = new BearingFilm(gallery.bearings(), circuit.lubricant());
    }

    /** Starts the next solve from a known point of a similar circuit. */
    public void startAt(OperatingPoint near) {
        status = near.status();
        starved = near.galleryStarved();
        bearingPressure = near.bearingPressure();
        film.startAt(near.filmTemperature() - near.temperature());
    }

    /** Starts the next solve from where that of a similar circuit ended. */
    public void startBeside(CircuitSolver other) {
        status = other.status;
        starved = other.starved;
        bearingPressure = other.bearingPressure;
        film.startAt(other.film.filmTemperature() - other.temperature);
    }

    /**
     * Solves for a pump speed [rev/s], a sump temperature [K] and a temperature of the metal around the bearings [K], from where
     * the last solve ended.
     */
    public SolveStatus solve(double nextSpeed, double nextTemperature, double metalTemperature) {
        boolean known = status == SolveStatus.CONVERGED && !starved;
        speed = nextSpeed;
        temperature = nextTemperature;
        sump = circuit.lubricant().at(temperature);
        viscosity = sump.dynamicViscosity();
        sideDemand = gallery.bearings().sideFlow() * speed;
        starved = false;
        filter.fill(sump);
        if (speed == 0) {
            filter.look(0, true);
            status = SolveStatus.NO_FLOW;
            return status;
        }
        film.enter(temperature, sump, speed, metalTemperature);
        double cautious = startPressure();
        double start = known ? Math.max(bearingPressure, 1e-3 * cautious) : cautious;
        status = settled(start) ? SolveStatus.CONVERGED : searched(start);
        return status;
    }

    /** Lets all unknowns settle together; a point found so is the point, since there is only one. */
    private boolean settled(double start) {
        exact = false;
        BracketedNewton newton = new BracketedNewton(0, Double.POSITIVE_INFINITY, start);
        for (steps = 1; steps <= JOINT_STEPS && !newton.isExhausted(); steps++) {
            evaluate(newton.point());
            if (!Double.isFinite(surplus) || !Double.isFinite(pumpPressure)) {
                return false;
            }
            if (isBalanced(TOLERANCE) && isSettled()) {
                return true;
            }
            newton.stepTo(sign(), proposal(newton.point()));
        }
        return false;
    }

    private double sign() {
        return surplus > 0 && excess < 0 ? 1 : -1;
    }

    private boolean isSettled() {
        return film.converged
                && filter.converged()
                && film.miss() <= DropFollower.SETTLED
                && filter.miss() <= DropFollower.SETTLED;
    }

    private SolveStatus searched(double start) {
        exact = true;
        if (sideDemand > 0) {
            starved = true;
            evaluate(sideDemand);
            starved = surplus < 0 || excess > 0;
        }
        SolveStatus found = starved ? balance(0.5 * sideDemand, sideDemand) : balance(start, Double.POSITIVE_INFINITY);
        if (starved) {
            film.look(0, galleryFlow, true);
        }
        return found;
    }

    /** Follows the unknown from a start, within 0 and a highest value, to where the flows balance. */
    private SolveStatus balance(double start, double high) {
        BracketedNewton newton = new BracketedNewton(0, high, start);
        for (steps = 1; steps <= MAX_STEPS; steps++) {
            evaluate(newton.point());
            if (!Double.isFinite(surplus) || !Double.isFinite(pumpPressure)) {
                return SolveStatus.NOT_FINITE;
            }
            if (isBalanced(TOLERANCE) || newton.isExhausted()) {
                return ended();
            }
            newton.stepTo(sign(), proposal(newton.point()));
        }
        return SolveStatus.MAX_ITERATIONS;
    }

    private SolveStatus ended() {
        if (!filter.converged()) {
            return SolveStatus.FILTER_NOT_SPLIT;
        }
        boolean onlyRounding = excess <= ACCEPTED && Math.abs(surplus) <= rounding();
        if (!isBalanced(ACCEPTED) && !onlyRounding) {
            return SolveStatus.NO_STEADY_STATE;
        }
        return starved || film.converged ? SolveStatus.CONVERGED : SolveStatus.FILM_TOO_HOT;
    }

    private double startPressure() {
        double start = 4e5;
        for (Relief relief : circuit.reliefs()) {
            start = Math.min(start, relief.setPressure());
        }
        return 0.7 * start;
    }

    private double proposal(double x) {
        double bySurplus = Math.min(x - surplus / surplusSlope, x + untilRelief);
        return excess == Double.NEGATIVE_INFINITY ? bySurplus : Math.min(bySurplus, x - excess / excessSlope);
    }

    /** Everything that follows from the unknown: bearing pressure [Pa], or the flow [m3/s] of a starved gallery. */
    private void evaluate(double unknown) {
        double flowSlope;
        double pressureSlope;
        restrictorFlow = 0;
        if (starved) {
            bearingPressure = 0;
            sideFlow = unknown;
            galleryFlow = unknown;
            flowSlope = 1;
            pressureSlope = 0;
        } else {
            bearingPressure = unknown;
            sideFlow = sideDemand;
            film.look(unknown, sideDemand, exact);
            flowSlope = film.flowSlope;
            for (Restrictor restrictor : restrictors) {
                FlowWithSlope through = restrictor.passage(unknown, sump);
                restrictorFlow += through.flowRate();
                flowSlope += through.slope();
            }
            galleryFlow = film.flow + restrictorFlow;
            pressureSlope = 1;
        }
        double series = viscosity * gallery.seriesResistance();
        galleryPressure = bearingPressure + series * galleryFlow;
        double gallerySlope = pressureSlope + series * flowSlope;
        filter.look(galleryFlow, exact);
        drop = filter.drop();
        pumpPressure = galleryPressure + drop;
        double pumpSlope = gallerySlope + filter.slope() * flowSlope;
        pumpFlow = circuit.pump().delivery(speed, pumpPressure, viscosity);
        surplus = pumpFlow - galleryFlow;
        surplusSlope = circuit.pump().deliverySlope(speed, pumpPressure, viscosity) * pumpSlope - flowSlope;
        addReliefs(pumpSlope, gallerySlope);
    }

    private void addReliefs(double pumpSlope, double gallerySlope) {
        excess = Double.NEGATIVE_INFINITY;
        excessSlope = 1;
        holding = -1;
        untilRelief = Double.POSITIVE_INFINITY;
        stiffest = -1;
        double greatest = 0;
        for (int i = 0; i < reliefs.length; i++) {
            Relief relief = reliefs[i];
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double sensed = outlet ? pumpPressure : galleryPressure;
            double slope = outlet ? pumpSlope : gallerySlope;
            if (relief.law().isPresent()) {
                PilotedLaw.Piloted dumped = relief.law().get().at(sensed, pumpPressure, sump);
                surplus -= dumped.flowRate();
                surplusSlope -= dumped.byOpening() * slope + dumped.byDriving() * pumpSlope;
                if (dumped.byOpening() > greatest) {
                    greatest = dumped.byOpening();
                    stiffest = i;
                }
                if (sensed < relief.setPressure()) {
                    untilRelief = Math.min(untilRelief, (JUST_OPEN * relief.setPressure() - sensed) / slope);
                }
            } else {
                double over = sensed / relief.setPressure() - 1;
                if (over > excess) {
                    excess = over;
                    excessSlope = slope / relief.setPressure();
                    holding = i;
                }
            }
        }
    }

    private boolean isBalanced(double tolerance) {
        double scale = Math.max(Math.abs(pumpFlow), galleryFlow);
        double allowed = tolerance * scale;
        if (Math.abs(surplus) > allowed && Math.abs(surplus) <= ACCEPTED * scale) {
            allowed = Math.max(allowed, Math.min(rounding(), ACCEPTED * scale));
        }
        boolean shut = Math.abs(surplus) <= allowed && excess <= tolerance;
        boolean held = surplus >= -allowed && Math.abs(excess) <= tolerance;
        return shut || held;
    }

    /** The oil in the sump of the last solve. */
    public Fluid fluid() {
        return sump;
    }

    /** Whether the journals ask for more oil than arrives. */
    public boolean isStarved() {
        return starved;
    }

    /** Whether the pickup sets the delivery. */
    public boolean isSuctionLimited() {
        return speed > 0 && circuit.pump().isSuctionLimited(speed, pumpPressure, viscosity);
    }

    /** What the last digits of the pressures can leave of the surplus [m3/s]. */
    private double rounding() {
        return 4 * Math.ulp(Math.max(bearingPressure, pumpPressure)) * Math.abs(surplusSlope);
    }

    private OperatingPoint atRest() {
        return new OperatingPoint(
                SolveStatus.NO_FLOW,
                0,
                temperature,
                0,
                0,
                0,
                0,
                Collections.nCopies(reliefs.length, 0.0),
                0,
                0,
                0,
                0,
                0,
                temperature,
                0,
                false,
                false,
                OperatingPoint.Residuals.ZERO,
                0);
    }

    /** The point that was found. */
    public OperatingPoint point() {
        if (speed == 0) {
            return atRest();
        }
        List<Double> reliefFlows = new ArrayList<>(reliefs.length);
        boolean held = Math.abs(excess) <= ACCEPTED && surplus > 0;
        // what rounding of the pressures leaves over goes through the valve that feels a pressure most
        double left = held ? 0 : surplus;
        double dumped = 0;
        for (int i = 0; i < reliefs.length; i++) {
            Relief relief = reliefs[i];
            double sensed = relief.sensing() == Relief.Sensing.PUMP_OUTLET ? pumpPressure : galleryPressure;
            double whenIdeal = held && i == holding ? surplus : 0;
            double flow = relief.law()
                    .map(law -> law.at(sensed, pumpPressure, sump).flowRate())
                    .orElse(whenIdeal);
            flow += i == stiffest ? Math.max(-flow, left) : 0;
            dumped += flow;
            reliefFlows.add(flow);
        }
        double bearingFlow = galleryFlow - restrictorFlow;
        return new OperatingPoint(
                status,
                speed,
                temperature,
                pumpPressure,
                galleryPressure,
                bearingPressure,
                pumpFlow,
                reliefFlows,
                galleryFlow,
                drop,
                bearingFlow,
                sideFlow,
                restrictorFlow,
                film.filmTemperature(),
                film.toMetal(),
                starved,
                isSuctionLimited(),
                residuals(dumped, held),
                steps);
    }

    private OperatingPoint.Residuals residuals(double dumped, boolean held) {
        double pumped = pumpPressure * pumpFlow;
        double spent = pumpPressure * dumped
                + drop * galleryFlow
                + (galleryPressure - bearingPressure) * galleryFlow
                + bearingPressure * (film.flow + restrictorFlow) * (starved ? 0 : 1);
        double offSetting = held ? Math.abs(excess) : Math.max(0, excess);
        double offChain = Math.abs(pumpPressure - galleryPressure - drop) / Math.max(pumpPressure, Double.MIN_NORMAL);
        return new OperatingPoint.Residuals(
                Math.abs(pumpFlow - dumped - galleryFlow) / Math.max(Math.abs(pumpFlow), Double.MIN_NORMAL),
                Math.max(offSetting, offChain),
                pumped == 0 ? 0 : Math.abs(pumped - spent) / pumped,
                film.miss());
    }
}
