package org.coldpleat.model.circuit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.shared.quantity.Require;

/**
 * Lubrication circuit of an engine: pump with relief valves, a series element (the filter with its bypass valves), and
 * the gallery back to the sump.
 *
 * @param pump pump
 * @param reliefs relief valves, none to several, all dumping from the pump outlet
 * @param filter drop over its total flow
 * @param gallery everything behind the filter
 * @param lubricant oil
 */
public record EngineCircuit(
        Pump pump, List<Relief> reliefs, PressureDropLaw filter, Gallery gallery, Lubricant lubricant) {
    public EngineCircuit {
        Objects.requireNonNull(pump, "pump");
        reliefs = List.copyOf(reliefs);
        Objects.requireNonNull(filter, "filter");
        Objects.requireNonNull(gallery, "gallery");
        Objects.requireNonNull(lubricant, "lubricant");
    }

    /** The same circuit around another series element. */
    public EngineCircuit withFilter(PressureDropLaw other) {
        return new EngineCircuit(pump, reliefs, other, gallery, lubricant);
    }

    /** Solves the circuit at one speed and temperature after another, around a series element that is followed. */
    public CircuitSolver solver(DropFollower element) {
        return new CircuitSolver(this, element);
    }

    /**
     * Steady state with metal as warm as the oil.
     *
     * @param speed of the pump [rev/s], at least 0
     * @param temperature of the oil in the sump [K], above 0
     * @return the one steady state, or a status that says why there is none
     */
    public OperatingPoint solve(double speed, double temperature) {
        return solve(speed, temperature, Optional.empty());
    }

    /**
     * Steady state with metal as warm as the oil, starting from a point that is expected to be near.
     *
     * @param speed of the pump [rev/s], at least 0
     * @param temperature of the oil in the sump [K], above 0
     * @param near a point of a similar circuit; changes the time taken, not the answer
     */
    public OperatingPoint solve(double speed, double temperature, Optional<OperatingPoint> near) {
        Require.notNegative("speed", speed, "rev/s");
        Require.positive("temperature", temperature, "K");
        CircuitSolver solver = solver(filter.follower());
        near.ifPresent(solver::startAt);
        solver.solve(speed, temperature, temperature);
        return solver.point();
    }
}
