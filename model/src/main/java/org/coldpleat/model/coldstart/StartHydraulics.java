package org.coldpleat.model.coldstart;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.CircuitSolver;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterSolver;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.valve.SpringValve;

/**
 * Circuit and filter of a start at any temperatures of oil and element. Holds the discrete state: speed, filling or
 * connected, valves held open. Each moment is solved from where the last one ended and then kept until the discrete state
 * changes, so that a search for an event, which asks for a moment again and again, always sees the same one.
 */
final class StartHydraulics {
    /**
     * Circuit, filter and oil of the sump at one moment.
     *
     * @param point the circuit
     * @param mediumFlow through the pack [m3/s]
     * @param elementBypass through the valve of the element [m3/s]
     * @param bypassFlow through all bypass valves [m3/s]
     * @param elementDifference across the valve of the element [Pa]
     * @param totalDrop over the filter, which is what a valve in the block sees [Pa]
     * @param sump its oil
     * @param held the oil in the pack
     * @param assembly the filter with its valves as they are
     */
    record Moment(
            OperatingPoint point,
            double mediumFlow,
            double elementBypass,
            double bypassFlow,
            double elementDifference,
            double totalDrop,
            Fluid sump,
            Fluid held,
            FilterAssembly assembly) {
        /** Difference across the element's valve (0) or the block's (1) [Pa]. */
        double difference(int valve) {
            return valve == 0 ? elementDifference : totalDrop;
        }

        /** All of the filter, solved for anew. */
        FilterState filter() {
            return assembly.solve(point.filterFlow(), sump, held);
        }
    }

    /** Temperatures of a moment [K]. */
    private record Temperatures(double oil, double element, double metal) {}

    /** A filter with its valves in one discrete state, and the circuit around it. */
    private static final class Branch {
        private final FilterAssembly assembly;
        private final FilterSolver filter;
        private final CircuitSolver circuit;

        Branch(EngineCircuit engine, FilterAssembly assembly) {
            this.assembly = assembly;
            filter = assembly.solver();
            circuit = engine.solver(filter);
        }
    }

    private final EngineCircuit engine;
    private final Lubricant lubricant;
    private final Branch[] branches = new Branch[4];
    private final boolean[] open = new boolean[2];
    private final Map<Temperatures, Moment> kept = new HashMap<>();
    private boolean filling;
    private double speed;

    StartHydraulics(StartUpSpec spec) {
        engine = spec.engine();
        lubricant = engine.lubricant();
        filling = spec.galleryVolume() > 0;
        speed = spec.schedule().phases().get(0).speed();
        FilterAssembly shut = spec.filter();
        FilterAssembly both = shut.afterOpening();
        branches[0] = new Branch(engine, shut);
        branches[1] = new Branch(
                engine,
                both.elementValve()
                        .map(v -> shut.withBypass(shut.elementValveLocation(), v))
                        .orElse(shut));
        branches[2] = new Branch(
                engine,
                both.blockValve()
                        .map(v -> shut.withBypass(BypassLocation.BLOCK, v))
                        .orElse(shut));
        branches[3] = new Branch(engine, both);
    }

    boolean isFilling() {
        return filling;
    }

    void connect() {
        filling = false;
        kept.clear();
    }

    /** Takes another speed of the pump [rev/s]. */
    void turn(double other) {
        speed = other;
        kept.clear();
    }

    boolean isOpen(int valve) {
        return open[valve];
    }

    boolean isAnyOpen() {
        return open[0] || open[1];
    }

    /** Marks a valve as opened or shut. */
    void mark(int valve, boolean nowOpen) {
        open[valve] = nowOpen;
        kept.clear();
    }

    /** Valve of the element (0) or the block (1) as it is now, held open by friction or not. */
    Optional<SpringValve> valve(int which) {
        FilterAssembly now = branch().assembly;
        return which == 0 ? now.elementValve() : now.blockValve();
    }

    private Branch branch() {
        return branches[(open[0] ? 1 : 0) + (open[1] ? 2 : 0)];
    }

    /** Circuit and filter with oil, element and metal at three temperatures [K]. */
    Moment at(double oil, double element, double metal) {
        Temperatures temperatures = new Temperatures(oil, element, metal);
        Moment known = kept.get(temperatures);
        if (known == null) {
            known = solve(oil, element, metal);
            kept.put(temperatures, known);
        }
        return known;
    }

    private Moment solve(double oil, double element, double metal) {
        if (Double.isNaN(oil + element + metal)) {
            throw new StartFailure("temperature");
        }
        Branch branch = branch();
        Fluid sump = lubricant.at(oil);
        Fluid held = element == oil ? sump : lubricant.at(element);
        branch.filter.hold(held);
        OperatingPoint point =
                filling ? FillStage.solve(engine, branch.filter, speed, oil) : connected(branch, oil, metal);
        if (!point.status().isAnswer()) {
            throw new StartFailure(point.status().name());
        }
        if (!branch.filter.converged()) {
            throw new StartFailure("filter");
        }
        return new Moment(
                point,
                branch.filter.mediumFlow(),
                branch.filter.elementBypass(),
                branch.filter.bypassFlow(),
                branch.filter.elementDifference(),
                branch.filter.drop(),
                sump,
                held,
                branch.assembly);
    }

    private OperatingPoint connected(Branch branch, double oil, double metal) {
        branch.circuit.solve(speed, oil, metal);
        return branch.circuit.point();
    }
}
