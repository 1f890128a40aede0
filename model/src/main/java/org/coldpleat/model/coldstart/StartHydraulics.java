package org.coldpleat.model.coldstart;

import java.util.Arrays;
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
 * connected, valves open or shut and where friction holds their lids. Each moment is solved from where the last one ended and then kept until the discrete state
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

    /** Way of a lid over its largest lift from which its place is kept between events [1]. */
    private static final double MOVED = 0.02;

    private final EngineCircuit engine;
    private final Lubricant lubricant;
    private final FilterAssembly shut;
    private final boolean[] open = new boolean[2];
    private double[] lids = new double[2];
    private final Map<Temperatures, Moment> kept = new HashMap<>();
    private Branch branch;
    private boolean filling;
    private double speed;

    StartHydraulics(StartUpSpec spec) {
        engine = spec.engine();
        lubricant = engine.lubricant();
        filling = spec.galleryVolume() > 0;
        speed = spec.schedule().phases().get(0).speed();
        shut = spec.filter();
        branch = new Branch(engine, shut);
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
        double[] next = lids.clone();
        next[valve] = 0;
        hang(next);
        kept.clear();
    }

    /** Lifts at which friction holds the lids of the element's valve and the block's [m]. */
    double[] lids() {
        return lids.clone();
    }

    /** Whether a lid stands so far from where friction was told to hold it that it is to be told anew. */
    boolean haveLidsMoved(Moment moment) {
        double[] now = liftsAt(moment);
        for (int i = 0; i < lids.length; i++) {
            int which = i;
            double most = valve(which).map(SpringValve::maximumLift).orElse(1.0);
            if (Math.abs(now[i] - lids[i]) > MOVED * most) {
                return true;
            }
        }
        return false;
    }

    /** Lets friction hold the lids where they are at a moment. */
    void settleLids(Moment moment) {
        hang(liftsAt(moment));
    }

    private double[] liftsAt(Moment moment) {
        double[] lifts = new double[lids.length];
        for (int i = 0; i < lids.length; i++) {
            double difference = moment.difference(i);
            lifts[i] = open[i]
                    ? valve(i).filter(SpringValve::hasFriction)
                            .map(valve -> valve.lift(difference))
                            .orElse(0.0)
                    : 0;
        }
        return lifts;
    }

    /** Hangs the lids at lifts [m]. */
    void hang(double[] next) {
        if (Arrays.equals(next, lids)) {
            return;
        }
        lids = next;
        FilterAssembly hung = shut;
        if (lids[0] > 0) {
            hung = hung.withBypass(
                    shut.elementValveLocation(),
                    shut.elementValve().orElseThrow().hangingAt(lids[0]));
        }
        if (lids[1] > 0) {
            hung = hung.withBypass(
                    BypassLocation.BLOCK, shut.blockValve().orElseThrow().hangingAt(lids[1]));
        }
        Branch before = branch;
        branch = new Branch(engine, hung);
        branch.circuit.startBeside(before.circuit);
        kept.clear();
    }

    /** Valve of the element (0) or the block (1) as it is now, held open by friction or not. */
    Optional<SpringValve> valve(int which) {
        FilterAssembly now = branch.assembly;
        return which == 0 ? now.elementValve() : now.blockValve();
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
        Fluid sump = lubricant.at(oil);
        Fluid held = element == oil ? sump : lubricant.at(element);
        branch.filter.hold(held);
        OperatingPoint point = filling ? FillStage.solve(engine, branch.filter, speed, oil) : connected(oil, metal);
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

    private OperatingPoint connected(double oil, double metal) {
        branch.circuit.solve(speed, oil, metal);
        return branch.circuit.point();
    }
}
