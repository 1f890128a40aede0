package org.coldpleat.model.steady;

import java.util.Optional;
import org.coldpleat.model.circuit.CircuitSolver;
import org.coldpleat.model.circuit.FlowStand;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterSolver;
import org.coldpleat.model.flow.Fluid;

/**
 * Solves one candidate in one operating state at one oil temperature after another, each from where the last one ended.
 * Numbers are read one by one; a whole point is built only when it is asked for. Work object of one thread.
 */
public final class StateSolver {
    private final StateModel model;
    private final FilterSolver filter;
    private final Optional<CircuitSolver> circuit;
    private final double held;

    private double temperature;
    private Fluid fluid;
    private SolveStatus status = SolveStatus.NO_FLOW;

    /** @param held factor on the opening pressures of the filter, 1 as they are [1] */
    StateSolver(StateModel model, FilterAssembly assembly, double held) {
        this.model = model;
        this.held = held;
        filter = assembly.solver();
        circuit = model.circuit().map(engine -> engine.solver(filter));
    }

    /** Starts the next solve from a point expected to be near. */
    public void startAt(OperatingPoint near) {
        circuit.ifPresent(solver -> solver.startAt(near));
    }

    /** Starts the next solve from where that of a similar model ended. */
    public void startBeside(StateSolver other) {
        circuit.ifPresent(solver -> solver.startBeside(other.circuit.orElseThrow()));
    }

    /**
     * Solves for an oil temperature [K].
     *
     * @return whether the numbers may be used
     */
    public boolean at(double oil) {
        temperature = oil;
        if (circuit.isPresent()) {
            status = circuit.get().solve(model.drive(), oil, oil + model.metalLead());
            fluid = circuit.get().fluid();
        } else {
            fluid = model.oil().at(oil);
            filter.fill(fluid);
            filter.settle(model.drive());
            status = FlowStand.status(model.drive(), filter.drop());
        }
        return isAnswer();
    }

    /** Whether the numbers of the last solve may be used. */
    public boolean isAnswer() {
        return status.isAnswer() && filter.converged();
    }

    /** Difference across the leading bypass valve over its opening pressure [1]; with no valve 0. */
    public double ratio() {
        return held * filter.leadingRatio();
    }

    /** The same at an oil temperature [K]; NaN without an answer. */
    public double ratioAt(double oil) {
        return at(oil) ? ratio() : Double.NaN;
    }

    /** Difference across the leading bypass valve [Pa]. */
    public double leadingDifference() {
        return filter.leadingDifference();
    }

    /** Drop over the whole filter [Pa]. */
    public double totalDrop() {
        return filter.drop();
    }

    /** Flow through the filter and its valves [m3/s]. */
    public double totalFlow() {
        return filter.flow();
    }

    /** Drop over the pleat pack [Pa]. */
    public double elementDrop() {
        return filter.elementDrop();
    }

    /** Share of the oil that goes round the medium [1]. */
    public double bypassShare() {
        return filter.bypassShare();
    }

    /** Whether the gallery gets less oil than the journals ask for. */
    public boolean isStarved() {
        return circuit.isPresent() && circuit.get().isStarved();
    }

    /** Whether the pickup limits the pump. */
    public boolean isSuctionLimited() {
        return circuit.isPresent() && circuit.get().isSuctionLimited();
    }

    /** All of the last solve. */
    public SolvedPoint point() {
        OperatingPoint point = circuit.isPresent()
                ? circuit.get().point()
                : FlowStand.point(status, model.drive(), temperature, filter.drop());
        return new SolvedPoint(point, filter.state(), fluid);
    }
}
