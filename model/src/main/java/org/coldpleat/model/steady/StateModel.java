package org.coldpleat.model.steady;

import java.util.Optional;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.engine.OilLubricant;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.valve.SpringValve;

/** One candidate in one operating state, ready to be solved at any temperature. */
public final class StateModel {
    /** Factor on an opening pressure that holds a valve shut for good [1]. */
    private static final double HELD = 1e6;

    private final OilLubricant oil;
    private final FilterAssembly filter;
    private final FilterAssembly heldShut;
    private final Optional<EngineCircuit> circuit;
    private final double drive;
    private final double metalLead;

    public StateModel(SharedModel shared, FilterAssembly own, OperatingState operatingState) {
        oil = shared.oil();
        if (operatingState.isEngine()) {
            EngineModel engine = shared.engine().orElseThrow();
            filter = engine.blockValve().isPresent()
                    ? own.withBypass(BypassLocation.BLOCK, engine.blockValve().get())
                    : own;
            circuit = Optional.of(
                    new EngineCircuit(engine.pump(), engine.reliefs(), filter.law(), engine.gallery(), oil));
            drive = operatingState.drive() * engine.pumpTurns();
            metalLead = engine.metalLead(operatingState.metal());
        } else {
            filter = own;
            circuit = Optional.empty();
            drive = operatingState.drive();
            metalLead = 0;
        }
        heldShut = heldShut(filter);
    }

    private static FilterAssembly heldShut(FilterAssembly filter) {
        FilterAssembly held = filter;
        if (filter.elementValve().isPresent()) {
            held = held.withBypass(
                    filter.elementValveLocation(),
                    heldShut(filter.elementValve().get()));
        }
        if (filter.blockValve().isPresent()) {
            held = held.withBypass(
                    BypassLocation.BLOCK, heldShut(filter.blockValve().get()));
        }
        return held;
    }

    private static SpringValve heldShut(SpringValve valve) {
        return valve.withOpeningPressure(HELD * valve.openingPressure());
    }

    /** The filter with every valve that acts on it in this operating state. */
    public FilterAssembly filter() {
        return filter;
    }

    /** The engine circuit, in an operating state of an engine. */
    public Optional<EngineCircuit> circuit() {
        return circuit;
    }

    /** True if any bypass valve acts on the filter in this operating state. */
    public boolean hasValve() {
        return filter.elementValve().isPresent() || filter.blockValve().isPresent();
    }

    OilLubricant oil() {
        return oil;
    }

    /** Speed of the pump [rev/s], or flow of the stand [m3/s]. */
    double drive() {
        return drive;
    }

    /** How much warmer than the oil the metal around the bearings is [K]. */
    double metalLead() {
        return metalLead;
    }

    /** Solves at one temperature after another. */
    public StateSolver solver() {
        return new StateSolver(this, filter, 1);
    }

    /** The same with every bypass valve held shut; the ratio is that over the true opening pressure. */
    public StateSolver heldShutSolver() {
        return new StateSolver(this, heldShut, HELD);
    }

    /** State at an oil temperature [K]. */
    public SolvedPoint at(double temperature) {
        return at(temperature, Optional.empty());
    }

    /** State at an oil temperature [K], starting from a point that is expected to be near. */
    public SolvedPoint at(double temperature, Optional<OperatingPoint> near) {
        return solved(solver(), temperature, near);
    }

    /** State at an oil temperature [K] with every bypass valve held shut. */
    public SolvedPoint heldShutAt(double temperature) {
        return solved(heldShutSolver(), temperature, Optional.empty());
    }

    private static SolvedPoint solved(StateSolver solver, double temperature, Optional<OperatingPoint> near) {
        near.ifPresent(solver::startAt);
        solver.at(temperature);
        return solver.point();
    }

    /**
     * Difference across the bypass valve over its opening pressure with every valve held shut [1]: the valve is open
     * exactly where this exceeds 1, since the circuit has one steady state. Of two valves the one that opens first counts.
     */
    public double ratio(SolvedPoint heldShut) {
        return HELD * heldShut.filter().leadingValve().ratio();
    }

    /** The same ratio [1] if a stated flow [m3/s] went through the filter however cold. */
    public double ratioAtFlow(double flow, double temperature) {
        return HELD * heldShut.solve(flow, oil.at(temperature)).leadingValve().ratio();
    }
}
