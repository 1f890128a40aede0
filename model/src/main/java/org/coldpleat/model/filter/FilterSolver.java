package org.coldpleat.model.filter;

import java.util.EnumMap;
import java.util.Map;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.source.Source;

/**
 * Splits a flow between pack and valves. Work object of one thread; starts from the split it found last.
 *
 * <p>With medium flow q, bypass flow v, {@code S(q) = k q + m q|q|} the drop of annulus (a third), pack, openings and
 * tube (a third), and {@code a} half the resistance of annulus and tube for a far-end valve (0 at the thread end), the
 * difference across the element valve is {@code y = S(q) - a q - a v} and the drop between its common points is
 * {@code S(q) + a v}. With {@code v = V(y)}, {@code q = Q - V(y)} the miss {@code h(y) = S(q) - a Q - y} decreases in y.
 * The block valve adds a second such equation around the first. An inexact look makes one Newton step in each of them,
 * and carries what it leaves over to first order; far from the answer it looks exactly.
 */
@Source("even inflow and outflow along annulus and tube: derived here by integrating the local flow")
public final class FilterSolver implements DropFollower {
    private static final int MAX_STEPS = 100;
    private static final double TOLERANCE = 2e-15;

    private static final int JOINT_STEPS = 8;

    private final FilterAssembly filter;
    private final SpringValve elementValve;
    private final SpringValve blockValve;
    private final DropFollower flap;
    private final PressureDropLaw holes;
    private final boolean dome;
    private Fluid own;

    private Fluid fluid;
    private Fluid elementFluid;
    private double shared;
    private double linear;
    private double quadratic;
    private double openLinear;
    private double openQuadratic;

    private boolean known;
    private boolean blockKnown;
    private boolean converged;
    private double miss;
    private double totalFlow;
    private double totalDrop;
    private double totalSlope;
    private double filterFlow;
    private double filterByTotal;
    private double mediumFlow;
    private double elementValveFlow;
    private double difference;
    private double differenceByFlow;
    private double bypassByFlow;
    private double drop;
    private double slope;

    /** @param own oil in the pack, whatever is in the rest; null for the same */
    FilterSolver(FilterAssembly filter, Fluid own) {
        this.filter = filter;
        this.own = own;
        elementValve = filter.elementValve().orElse(null);
        blockValve = filter.blockValve().orElse(null);
        flap = filter.antiDrainFlap() instanceof AdditiveLaw
                ? null
                : filter.antiDrainFlap().follower();
        holes = filter.inletHoles() instanceof AdditiveLaw ? null : filter.inletHoles();
        dome = filter.elementValveLocation() == BypassLocation.DOME;
    }

    /** Takes oil of its own into the pack, from the next filling of the rest on. */
    public void hold(Fluid inPack) {
        own = inPack;
    }

    @Override
    public void fill(Fluid other) {
        fluid = other;
        elementFluid = own == null ? other : own;
        double mu = fluid.dynamicViscosity();
        double rho = fluid.density();
        AdditiveLaw openings = filter.tubeOpenings();
        AdditiveLaw tube = filter.centerTube();
        AdditiveLaw bore = filter.outletBore();
        double passages = filter.annulusResistance() + tube.laminar();
        linear =
                mu * (passages / 3 + openings.laminar()) + elementFluid.dynamicViscosity() * filter.elementResistance();
        quadratic = rho * (openings.inertial() + (dome ? 0 : tube.inertial()));
        shared = dome ? mu * passages / 2 : 0;
        openLinear = mu * bore.laminar();
        openQuadratic = rho * (bore.inertial() + (dome ? tube.inertial() : 0));
        addOpening(filter.inletHoles());
        addOpening(filter.antiDrainFlap());
        if (flap != null) {
            flap.fill(other);
        }
    }

    private void addOpening(PressureDropLaw law) {
        if (law instanceof AdditiveLaw opening) {
            openLinear += fluid.dynamicViscosity() * opening.laminar();
            openQuadratic += fluid.density() * opening.inertial();
        }
    }

    @Override
    public void look(double flow, boolean exact) {
        double moved = flow - totalFlow;
        totalFlow = flow;
        converged = true;
        miss = 0;
        if (blockValve == null || flow == 0) {
            lookThrough(flow, exact);
            totalDrop = drop;
            totalSlope = slope;
        } else if (exact || !stepBlock(flow, moved)) {
            converged = true;
            miss = 0;
            searchBlock(flow);
        }
    }

    /** Looks at a flow [m3/s] until everything has settled. */
    public void settle(double flow) {
        for (int i = 0; i < JOINT_STEPS; i++) {
            look(flow, false);
            if (converged && miss <= SETTLED) {
                return;
            }
        }
        look(flow, true);
    }

    /** One step of the flow through the filter beside its block valve; false if that is not enough. */
    private boolean stepBlock(double flow, double moved) {
        if (!blockKnown) {
            return false;
        }
        lookThrough(filterFlow + filterByTotal * moved, false);
        FlowWithSlope block = blockValve.passage(drop, fluid);
        double missing = flow - block.flowRate() - filterFlow;
        double stiffness = 1 + block.slope() * slope;
        double size = Math.abs(missing / flow);
        if (!(size <= FAR)) {
            return false;
        }
        miss = Math.max(miss, size);
        double step = missing / stiffness;
        filterFlow += step;
        follow(step);
        totalDrop = drop;
        totalSlope = slope / stiffness;
        filterByTotal = 1 / stiffness;
        return true;
    }

    private void searchBlock(double flow) {
        lookThrough(flow, true);
        BracketedNewton newton = new BracketedNewton(Math.min(0, flow), Math.max(0, flow), startOfFilterFlow(flow));
        for (int i = 0; ; i++) {
            lookThrough(newton.point(), true);
            FlowWithSlope block = blockValve.passage(drop, fluid);
            double missing = flow - block.flowRate() - filterFlow;
            double stiffness = 1 + block.slope() * slope;
            boolean done = Math.abs(missing) <= TOLERANCE * Math.abs(flow) * stiffness || newton.isExhausted();
            if (done || i == MAX_STEPS) {
                converged &= done;
                filterByTotal = 1 / stiffness;
                totalDrop = drop;
                totalSlope = slope / stiffness;
                blockKnown = true;
                return;
            }
            newton.step(missing, -stiffness);
        }
    }

    /** Where the filter alone would just open the block valve, if that is less than the whole flow. */
    private double startOfFilterFlow(double flow) {
        return drop > blockValve.openingPressure() ? flow * blockValve.openingPressure() / drop : flow;
    }

    private void lookThrough(double flow, boolean exact) {
        double moved = flow - filterFlow;
        filterFlow = flow;
        double between;
        double betweenSlope;
        if (elementValve == null) {
            mediumFlow = flow;
            elementValveFlow = 0;
            difference = mediumDrop(flow) - shared * flow;
            between = mediumDrop(flow);
            betweenSlope = mediumSlope(flow);
        } else {
            if (exact || !stepSplit(flow, moved)) {
                searchSplit(flow);
            }
            between = difference + shared * (flow + elementValveFlow);
            betweenSlope = differenceByFlow + shared * (1 + bypassByFlow);
        }
        drop = openLinear * flow + openQuadratic * flow * Math.abs(flow) + between;
        slope = openLinear + 2 * openQuadratic * Math.abs(flow) + betweenSlope;
        if (flap != null) {
            flap.look(flow, exact);
            converged &= flap.converged();
            miss = Math.max(miss, flap.miss());
            drop += flap.drop();
            slope += flap.slope();
        }
        if (holes != null) {
            Drop at = holes.at(flow, fluid);
            drop += at.pressureDrop();
            slope += at.slope();
        }
    }

    /** One step of the difference across the element valve; false if that is not enough. */
    private boolean stepSplit(double flow, double moved) {
        double y = known ? difference + differenceByFlow * moved : start(mediumDrop(flow) - shared * flow);
        FlowWithSlope valve = elementValve.passage(y, fluid);
        double through = flow - valve.flowRate();
        double medium = mediumSlope(through);
        double missing = mediumDrop(through) - shared * flow - y;
        double stiffness = 1 + medium * valve.slope();
        double size = Math.abs(missing) / scale(flow, y, medium * valve.slope());
        if (!(size <= FAR)) {
            return false;
        }
        miss = Math.max(miss, size);
        double step = missing / stiffness;
        settle(flow, y + step, valve.flowRate() + valve.slope() * step, valve.slope(), medium, stiffness);
        return true;
    }

    private void searchSplit(double flow) {
        double shut = mediumDrop(flow) - shared * flow;
        BracketedNewton newton = new BracketedNewton(Math.min(0, shut), Math.max(0, shut), start(shut));
        for (int i = 0; ; i++) {
            double y = newton.point();
            FlowWithSlope valve = elementValve.passage(y, fluid);
            double through = flow - valve.flowRate();
            double medium = mediumSlope(through);
            double missing = mediumDrop(through) - shared * flow - y;
            double stiffness = 1 + medium * valve.slope();
            boolean done =
                    Math.abs(missing) <= TOLERANCE * scale(flow, y, medium * valve.slope()) || newton.isExhausted();
            if (done || i == MAX_STEPS) {
                converged &= done;
                settle(flow, y, valve.flowRate(), valve.slope(), medium, stiffness);
                return;
            }
            newton.step(missing, -stiffness);
        }
    }

    /** What rounding alone can leave of a miss is a share of this [Pa]. */
    private double scale(double flow, double y, double steepness) {
        double shut = Math.abs(mediumDrop(flow) - shared * flow);
        return Math.max(Math.max(shut, Math.abs(y) * steepness), Double.MIN_NORMAL);
    }

    private void settle(double flow, double y, double bypass, double valveSlope, double medium, double stiffness) {
        difference = y;
        elementValveFlow = bypass;
        mediumFlow = flow - bypass;
        differenceByFlow = (medium - shared) / stiffness;
        bypassByFlow = valveSlope * differenceByFlow;
        known = true;
    }

    /** Carries everything over to a flow that is a small step further [m3/s]. */
    private void follow(double step) {
        drop += slope * step;
        difference += differenceByFlow * step;
        elementValveFlow += bypassByFlow * step;
        mediumFlow = filterFlow - elementValveFlow;
    }

    private double start(double shut) {
        return shut > elementValve.openingPressure() ? 1.05 * elementValve.openingPressure() : shut;
    }

    private double mediumDrop(double flow) {
        return linear * flow + quadratic * flow * Math.abs(flow);
    }

    private double mediumSlope(double flow) {
        return linear + 2 * quadratic * Math.abs(flow);
    }

    @Override
    public double drop() {
        return totalDrop;
    }

    /** Slope over the total flow, block valve included. */
    @Override
    public double slope() {
        return totalSlope;
    }

    @Override
    public double miss() {
        return miss;
    }

    @Override
    public boolean converged() {
        return converged;
    }

    /** Difference over opening pressure of the valve closest to opening or furthest open [1]; 0 without a valve. */
    public double leadingRatio() {
        return leads() ? elementRatio() : blockRatio();
    }

    /** Difference across that valve [Pa]. */
    public double leadingDifference() {
        return leads() ? difference : totalDrop;
    }

    private boolean leads() {
        return elementRatio() >= blockRatio();
    }

    private double elementRatio() {
        return elementValve == null ? 0 : difference / elementValve.openingPressure();
    }

    private double blockRatio() {
        return blockValve == null ? 0 : totalDrop / blockValve.openingPressure();
    }

    /** Flow through filter and valves of the last look [m3/s]. */
    public double flow() {
        return totalFlow;
    }

    /** Drop over the pleat pack [Pa]. */
    public double elementDrop() {
        return elementFluid.dynamicViscosity() * filter.elementResistance() * mediumFlow;
    }

    /** Flow through the pack [m3/s]. */
    public double mediumFlow() {
        return mediumFlow;
    }

    /** Flow through the valve of the element [m3/s]. */
    public double elementBypass() {
        return elementValveFlow;
    }

    /** Flow through all bypass valves [m3/s]. */
    public double bypassFlow() {
        return elementValveFlow + (blockValve == null ? 0 : blockValve.flowRate(totalDrop, fluid));
    }

    /** Difference across the valve of the element, or across where one would be [Pa]. */
    public double elementDifference() {
        return difference;
    }

    /** Share of the total flow that is not filtered [1], as {@link FilterState#bypassShare}. */
    public double bypassShare() {
        return totalFlow == 0 ? 0 : Math.max(0, bypassFlow() / totalFlow);
    }

    /** The last look with everything in it. */
    public FilterState state() {
        double mu = fluid.dynamicViscosity();
        double through = dome ? elementValveFlow : 0;
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
        double round = blockValve == null ? 0 : blockValve.flowRate(totalDrop, fluid);
        return new FilterState(
                converged,
                totalFlow,
                totalDrop,
                totalSlope,
                parts,
                mediumFlow,
                ValveState.of(filter.elementValve(), elementValveFlow, difference),
                ValveState.of(filter.blockValve(), round, totalDrop));
    }
}
