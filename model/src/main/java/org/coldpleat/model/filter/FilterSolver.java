package org.coldpleat.model.filter;

import java.util.EnumMap;
import java.util.Map;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.source.Source;

/**
 * Splits a flow between pack and valves. Work object of one solve, used by one thread.
 *
 * <p>With medium flow q, bypass flow v, {@code S(q) = k q + m q|q|} the drop of annulus (a third), pack, openings and
 * tube (a third), and {@code a} half the resistance of annulus and tube for a far-end valve (0 at the thread end), the
 * difference across the element valve is {@code y = S(q) - a q - a v} and the drop between its common points is
 * {@code S(q) + a v}. With {@code v = V(y)}, {@code q = Q - V(y)} the miss {@code h(y) = S(q) - a Q - y} decreases in y.
 * The block valve adds a second such equation around the first.
 */
@Source("even inflow and outflow along annulus and tube: derived here by integrating the local flow")
final class FilterSolver {
    private static final int MAX_STEPS = 100;
    private static final double TOLERANCE = 2e-15;

    private final FilterAssembly filter;
    private final Fluid fluid;
    private final Fluid elementFluid;
    private final double shared;
    private final double linear;
    private final double quadratic;
    private final SpringValve elementValve;
    private final SpringValve blockValve;

    private boolean converged = true;
    private double totalFlow;
    private double filterFlow;
    private double mediumFlow;
    private double elementValveFlow;
    private double elementValveDifference;
    private double drop;
    private double slope;

    FilterSolver(FilterAssembly filter, Fluid fluid, Fluid elementFluid) {
        this.filter = filter;
        this.fluid = fluid;
        this.elementFluid = elementFluid;
        elementValve = filter.elementValve().orElse(null);
        blockValve = filter.blockValve().orElse(null);
        double mu = fluid.dynamicViscosity();
        double passages = filter.annulusResistance() + filter.centerTube().laminar();
        linear = mu * (passages / 3 + filter.tubeOpenings().laminar())
                + elementFluid.dynamicViscosity() * filter.elementResistance();
        double momentum = isDome() ? 0 : filter.centerTube().inertial();
        quadratic = fluid.density() * (filter.tubeOpenings().inertial() + momentum);
        shared = isDome() ? mu * passages / 2 : 0;
    }

    /** Solves for a total flow [m3/s]. */
    void solve(double flow) {
        totalFlow = flow;
        solveFilter(flow);
        if (blockValve == null || flow == 0) {
            return;
        }
        BracketedNewton newton = new BracketedNewton(Math.min(0, flow), Math.max(0, flow), startOfFilterFlow(flow));
        for (int i = 0; ; i++) {
            solveFilter(newton.point());
            FlowWithSlope block = blockValve.passage(drop, fluid);
            double miss = flow - block.flowRate() - filterFlow;
            if (Math.abs(miss) <= TOLERANCE * Math.abs(flow) || newton.isExhausted()) {
                break;
            }
            if (i == MAX_STEPS) {
                converged = false;
                break;
            }
            newton.step(miss, -1 - block.slope() * slope);
        }
    }

    /** Where the filter alone would just open the block valve, if that is less than the whole flow. */
    private double startOfFilterFlow(double flow) {
        return drop > blockValve.openingPressure() ? flow * blockValve.openingPressure() / drop : flow;
    }

    private void solveFilter(double flow) {
        filterFlow = flow;
        double split = splitSlope(flow);
        double mediumSlope = linear + 2 * quadratic * Math.abs(mediumFlow);
        Drop holes = filter.inletHoles().at(flow, fluid);
        Drop flap = filter.antiDrainFlap().at(flow, fluid);
        Drop bore = filter.outletBore().at(flow, fluid);
        drop = holes.pressureDrop()
                + flap.pressureDrop()
                + mediumDrop(mediumFlow)
                + shared * elementValveFlow
                + domeMomentum() * flow * Math.abs(flow)
                + bore.pressureDrop();
        slope = holes.slope()
                + flap.slope()
                + mediumSlope * (1 - split)
                + shared * split
                + 2 * domeMomentum() * Math.abs(flow)
                + bore.slope();
    }

    /** Finds medium and bypass flow; returns d(bypass flow)/d(flow). */
    private double splitSlope(double flow) {
        mediumFlow = flow;
        elementValveFlow = 0;
        double shut = mediumDrop(flow) - shared * flow;
        elementValveDifference = shut;
        if (elementValve == null) {
            return 0;
        }
        BracketedNewton newton = new BracketedNewton(Math.min(0, shut), Math.max(0, shut), start(shut));
        for (int i = 0; ; i++) {
            double y = newton.point();
            FlowWithSlope valve = elementValve.passage(y, fluid);
            elementValveFlow = valve.flowRate();
            mediumFlow = flow - elementValveFlow;
            elementValveDifference = y;
            double valveSlope = valve.slope();
            double mediumSlope = linear + 2 * quadratic * Math.abs(mediumFlow);
            double miss = mediumDrop(mediumFlow) - shared * flow - y;
            boolean done = Math.abs(miss) <= TOLERANCE * Math.abs(shut) || newton.isExhausted();
            if (done || i == MAX_STEPS) {
                converged &= done;
                double seen = (mediumSlope - shared) / (1 + mediumSlope * valveSlope);
                return valveSlope * seen;
            }
            newton.step(miss, -1 - mediumSlope * valveSlope);
        }
    }

    private double start(double shut) {
        return shut > elementValve.openingPressure() ? 1.05 * elementValve.openingPressure() : shut;
    }

    private double mediumDrop(double flow) {
        return linear * flow + quadratic * flow * Math.abs(flow);
    }

    private double domeMomentum() {
        return isDome() ? fluid.density() * filter.centerTube().inertial() : 0;
    }

    private boolean isDome() {
        return filter.elementValveLocation() == BypassLocation.DOME;
    }

    double totalDrop() {
        return drop;
    }

    /** Slope over the total flow, block valve included. */
    double totalSlope() {
        return blockValve == null ? slope : slope / (1 + slope * blockValve.flowSlope(drop, fluid));
    }

    FilterState state() {
        double mu = fluid.dynamicViscosity();
        double through = isDome() ? elementValveFlow : 0;
        double along = mu * (mediumFlow / 3 + through / 2);
        double tubeMomentum = fluid.density() * filter.centerTube().inertial();
        double carried = mediumFlow + through;
        Map<FilterPart, Double> parts = new EnumMap<>(FilterPart.class);
        parts.put(FilterPart.INLET_HOLES, filter.inletHoles().pressureDrop(filterFlow, fluid));
        parts.put(FilterPart.ANTI_DRAIN_FLAP, filter.antiDrainFlap().pressureDrop(filterFlow, fluid));
        parts.put(FilterPart.CAN_ANNULUS, filter.annulusResistance() * along);
        parts.put(FilterPart.PLEAT_PACK, elementFluid.dynamicViscosity() * filter.elementResistance() * mediumFlow);
        parts.put(FilterPart.TUBE_OPENINGS, filter.tubeOpenings().pressureDrop(mediumFlow, fluid));
        parts.put(
                FilterPart.CENTER_TUBE,
                filter.centerTube().laminar() * along + tubeMomentum * carried * Math.abs(carried));
        parts.put(FilterPart.OUTLET_BORE, filter.outletBore().pressureDrop(filterFlow, fluid));
        double blockFlow = blockValve == null ? 0 : blockValve.flowRate(drop, fluid);
        return new FilterState(
                converged,
                totalFlow,
                drop,
                totalSlope(),
                parts,
                mediumFlow,
                ValveState.of(filter.elementValve(), elementValveFlow, elementValveDifference),
                ValveState.of(filter.blockValve(), blockFlow, drop));
    }
}
