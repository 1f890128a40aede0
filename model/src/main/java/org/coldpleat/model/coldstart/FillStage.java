package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.FilterSolver;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Circuit while the gallery is still empty: no pressure behind the filter, so the pump pressure is the filter's drop, and
 * only the pump and relief valves that sense its outlet limit it, {@code dp = min(drop of the delivery, p_r)}.
 */
@Source("flow balance at the pump outlet with an empty gallery; derived here")
@Validity("the front of the filling oil meets no resistance worth counting")
final class FillStage {
    private static final int MAX_STEPS = 200;
    private static final double TOLERANCE = 1e-13;

    private FillStage() {}

    /** Operating point with an empty gallery; the pack holds its oil already, and the filter starts from its last flow. */
    static OperatingPoint solve(EngineCircuit engine, FilterSolver filter, double speed, double temperature) {
        Fluid fluid = engine.lubricant().at(temperature);
        double viscosity = fluid.dynamicViscosity();
        double most = engine.pump().delivery(speed, 0, viscosity);
        filter.fill(fluid);
        double last = filter.flow();
        BracketedNewton newton = new BracketedNewton(0, most, last > 0 && last < most ? last : 0.5 * most);
        SolveStatus status = speed == 0 ? SolveStatus.NO_FLOW : SolveStatus.MAX_ITERATIONS;
        double flow = 0;
        double pressure = 0;
        double delivered = 0;
        double surplus = 0;
        boolean held = false;
        for (int i = 0; i < MAX_STEPS && speed > 0; i++) {
            flow = newton.point();
            filter.look(flow, true);
            pressure = filter.drop();
            delivered = engine.pump().delivery(speed, pressure, viscosity);
            surplus = delivered - flow;
            double slope = engine.pump().deliverySlope(speed, pressure, viscosity) * filter.slope() - 1;
            double excess = Double.NEGATIVE_INFINITY;
            double excessSlope = 1;
            for (Relief relief : engine.reliefs()) {
                if (relief.sensing() == Relief.Sensing.PUMP_OUTLET
                        && relief.law().isPresent()) {
                    PilotedLaw.Piloted dumped = relief.law().get().at(pressure, pressure, fluid);
                    surplus -= dumped.flowRate();
                    slope -= (dumped.byOpening() + dumped.byDriving()) * filter.slope();
                } else if (relief.sensing() == Relief.Sensing.PUMP_OUTLET) {
                    double over = pressure / relief.setPressure() - 1;
                    excessSlope = over > excess ? filter.slope() / relief.setPressure() : excessSlope;
                    excess = Math.max(over, excess);
                }
            }
            held = Math.abs(excess) <= TOLERANCE && surplus > 0;
            boolean shut = Math.abs(surplus) <= TOLERANCE * delivered && excess <= TOLERANCE;
            if (held || shut || newton.isExhausted()) {
                status = SolveStatus.CONVERGED;
                break;
            }
            double proposal = flow - surplus / slope;
            if (excess != Double.NEGATIVE_INFINITY) {
                proposal = Math.min(proposal, flow - excess / excessSlope);
            }
            newton.stepTo(surplus > 0 && excess < 0 ? 1 : -1, proposal);
        }
        if (speed == 0) {
            filter.look(0, true);
        }
        if (!Double.isFinite(pressure)) {
            status = SolveStatus.NOT_FINITE;
        }
        return new OperatingPoint(
                status,
                speed,
                temperature,
                pressure,
                0,
                0,
                delivered,
                reliefFlows(engine, pressure, fluid, delivered - flow, held),
                flow,
                pressure,
                0,
                0,
                0,
                temperature,
                0,
                false,
                speed > 0 && engine.pump().isSuctionLimited(speed, pressure, viscosity),
                OperatingPoint.Residuals.ZERO,
                0);
    }

    /** Flow of each relief valve; what the lawful ones leave of the dumped flow is the ideal valve's that holds. */
    private static List<Double> reliefFlows(
            EngineCircuit engine, double pressure, Fluid fluid, double dumped, boolean held) {
        List<Double> flows = new ArrayList<>();
        double rest = dumped;
        int holding = -1;
        double lowest = Double.POSITIVE_INFINITY;
        for (Relief relief : engine.reliefs()) {
            boolean senses = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double flow = senses && relief.law().isPresent()
                    ? relief.law().get().at(pressure, pressure, fluid).flowRate()
                    : 0;
            if (senses && relief.law().isEmpty() && relief.setPressure() < lowest) {
                lowest = relief.setPressure();
                holding = flows.size();
            }
            rest -= flow;
            flows.add(flow);
        }
        if (held && holding >= 0) {
            flows.set(holding, Math.max(0, rest));
        }
        return flows;
    }
}
