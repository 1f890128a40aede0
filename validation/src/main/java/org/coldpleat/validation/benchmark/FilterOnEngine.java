package org.coldpleat.validation.benchmark;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.circuit.CircuitSolver;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterSolver;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.steady.OpeningFinder;

/**
 * An engine with one filter on it.
 *
 * @param circuit engine; its series element is the filter's law
 * @param filter the filter itself, for its inner state
 */
public record FilterOnEngine(EngineCircuit circuit, FilterAssembly filter) {
    public FilterOnEngine {
        Objects.requireNonNull(circuit, "circuit");
        Objects.requireNonNull(filter, "filter");
    }

    /** Puts a filter on an engine, in place of the series element the circuit has. */
    public static FilterOnEngine mount(FilterAssembly filter, EngineCircuit circuit) {
        return new FilterOnEngine(circuit.withFilter(filter.law()), filter);
    }

    /**
     * Engine and filter at one speed and temperature.
     *
     * @param point of the circuit
     * @param filter inner state at that flow
     */
    public record State(OperatingPoint point, FilterState filter) {
        /** Whether both were found. */
        public boolean isAnswer() {
            return point.status().isAnswer() && filter.converged();
        }
    }

    /**
     * Steady state.
     *
     * @param speed of the pump [rev/s], at least 0
     * @param temperature of the sump [K]
     * @param near a state expected to be near; changes the time taken only
     */
    public State solve(double speed, double temperature, Optional<State> near) {
        OperatingPoint point = circuit.solve(speed, temperature, near.map(State::point));
        return new State(
                point, filter.solve(point.filterFlow(), circuit.lubricant().at(temperature)));
    }

    /**
     * Steady state with a pack that holds oil of its own temperature, as after a time in bypass.
     *
     * @param speed of the pump [rev/s], at least 0
     * @param temperature of the sump [K]
     * @param elementTemperature of the oil in the pack [K]
     * @param near a state expected to be near; changes the time taken only
     */
    public State solve(double speed, double temperature, double elementTemperature, Optional<State> near) {
        Fluid inPack = circuit.lubricant().at(elementTemperature);
        OperatingPoint point = circuit.withFilter(filter.law(inPack)).solve(speed, temperature, near.map(State::point));
        return new State(
                point, filter.solve(point.filterFlow(), circuit.lubricant().at(temperature), inPack));
    }

    /** Steady state without a state to start from. */
    public State solve(double speed, double temperature) {
        return solve(speed, temperature, Optional.empty());
    }

    /**
     * Difference over opening pressure of the leading bypass valve as a function of temperature at one speed; NaN where
     * there is no answer. Each value starts from the one before, so one thread at a time may use it.
     */
    public OpeningFinder.Ratio ratioAt(double speed) {
        FilterSolver split = filter.solver();
        CircuitSolver solver = circuit.solver(split);
        return temperature -> solver.solve(speed, temperature, temperature).isAnswer() && split.converged()
                ? split.leadingRatio()
                : Double.NaN;
    }
}
