package org.coldpleat.model.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;

/**
 * Finds the steady state. Work object of one solve, used by one thread.
 *
 * <p>The unknown is the pressure before the bearings (or, when the side flow cannot be met, the flow of the starved
 * gallery). Given it, gallery flow, gallery pressure, filter drop and pump pressure follow one from the other, and the
 * surplus {@code pump - reliefs - gallery} falls while the pressures rise. Ideal relief valves add the condition that no
 * sensed pressure exceeds its setting: with {@code v} the largest excess, the answer is the root of
 * {@code min(surplus, -v)}, and what is left of the surplus is the flow of the valve that holds.
 */
@Source("monotone network with one node unknown; derived here")
final class CircuitSolver {
    private static final int MAX_STEPS = 200;
    private static final double TOLERANCE = 1e-13;
    private static final double ACCEPTED = 1e-9;

    private final EngineCircuit circuit;
    private final double speed;
    private final double temperature;
    private final Fluid sump;
    private final double viscosity;
    private final BearingFilm film;
    private final double sideDemand;

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
    private double excess;
    private double excessSlope;
    private int holding;
    private int steps;

    CircuitSolver(EngineCircuit circuit, double speed, double temperature) {
        this.circuit = circuit;
        this.speed = speed;
        this.temperature = temperature;
        sump = circuit.lubricant().at(temperature);
        viscosity = sump.dynamicViscosity();
        film = new BearingFilm(circuit.gallery().bearings(), circuit.lubricant(), temperature, sump, speed);
        sideDemand = circuit.gallery().bearings().sideFlow() * speed;
    }

    OperatingPoint solve(Optional<OperatingPoint> near) {
        if (speed == 0) {
            return atRest();
        }
        Optional<OperatingPoint> known = near.filter(point -> point.status() == SolveStatus.CONVERGED);
        double start = startPressure();
        if (known.isPresent()) {
            start = Math.max(known.get().bearingPressure(), 1e-3 * start);
            film.startAt(known.get().filmTemperature());
        }
        // beside a point that is not starved this one hardly is; if it is, no pressure above 0 balances
        boolean settled = known.isPresent()
                && !known.get().galleryStarved()
                && balance(start, Double.POSITIVE_INFINITY) == SolveStatus.CONVERGED;
        if (settled) {
            return result(SolveStatus.CONVERGED);
        }
        if (sideDemand > 0) {
            starved = true;
            evaluate(sideDemand);
            starved = surplus < 0 || excess > 0;
        }
        SolveStatus status = starved ? balance(0.5 * sideDemand, sideDemand) : balance(start, Double.POSITIVE_INFINITY);
        if (starved) {
            film.solve(0, galleryFlow);
        }
        return result(status);
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
                return isBalanced(ACCEPTED) ? SolveStatus.CONVERGED : SolveStatus.NO_STEADY_STATE;
            }
            advance(newton);
        }
        return SolveStatus.MAX_ITERATIONS;
    }

    private double startPressure() {
        double start = 4e5;
        for (Relief relief : circuit.reliefs()) {
            start = Math.min(start, relief.setPressure());
        }
        return 0.7 * start;
    }

    private void advance(BracketedNewton newton) {
        double x = newton.point();
        double bySurplus = x - surplus / surplusSlope;
        double proposal =
                excess == Double.NEGATIVE_INFINITY ? bySurplus : Math.min(bySurplus, x - excess / excessSlope);
        double sign = surplus > 0 && excess < 0 ? 1 : -1;
        newton.step(sign, proposal, Math.abs(proposal - x));
    }

    /** Everything that follows from the unknown: bearing pressure [Pa], or the flow [m3/s] of a starved gallery. */
    private void evaluate(double unknown) {
        Gallery gallery = circuit.gallery();
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
            film.solve(unknown, sideDemand);
            flowSlope = film.flowSlope;
            for (Restrictor restrictor : gallery.restrictors()) {
                restrictorFlow += restrictor.flowRate(unknown, sump);
                flowSlope += restrictor.flowSlope(unknown, sump);
            }
            galleryFlow = film.flow + restrictorFlow;
            pressureSlope = 1;
        }
        double series = viscosity * gallery.seriesResistance();
        galleryPressure = bearingPressure + series * galleryFlow;
        double gallerySlope = pressureSlope + series * flowSlope;
        Drop filter = circuit.filter().at(galleryFlow, sump);
        drop = filter.pressureDrop();
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
        List<Relief> reliefs = circuit.reliefs();
        for (int i = 0; i < reliefs.size(); i++) {
            Relief relief = reliefs.get(i);
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double sensed = outlet ? pumpPressure : galleryPressure;
            double slope = outlet ? pumpSlope : gallerySlope;
            if (relief.law().isPresent()) {
                FlowWithSlope dumped = relief.law().get().passage(sensed, sump);
                surplus -= dumped.flowRate();
                surplusSlope -= dumped.slope() * slope;
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
        boolean shut = Math.abs(surplus) <= tolerance * scale && excess <= tolerance;
        boolean held = surplus >= -tolerance * scale && Math.abs(excess) <= tolerance;
        return shut || held;
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
                Collections.nCopies(circuit.reliefs().size(), 0.0),
                0,
                0,
                0,
                0,
                0,
                temperature,
                false,
                false,
                OperatingPoint.Residuals.ZERO,
                0);
    }

    private OperatingPoint result(SolveStatus status) {
        List<Relief> reliefs = circuit.reliefs();
        List<Double> reliefFlows = new ArrayList<>(reliefs.size());
        boolean held = Math.abs(excess) <= ACCEPTED && surplus > 0;
        double dumped = 0;
        for (int i = 0; i < reliefs.size(); i++) {
            Relief relief = reliefs.get(i);
            double sensed = relief.sensing() == Relief.Sensing.PUMP_OUTLET ? pumpPressure : galleryPressure;
            double whenIdeal = held && i == holding ? surplus : 0;
            double flow = relief.law().map(law -> law.flowRate(sensed, sump)).orElse(whenIdeal);
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
                starved,
                circuit.pump().isSuctionLimited(speed, pumpPressure, viscosity),
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
                film.residual);
    }
}
