package org.coldpleat.model.filter;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.quantity.Require;

/**
 * A filter as the oil sees it: parts in series, a bypass valve in the element (thread end or far end), a bypass valve in
 * the block, both, or none. Absent parts are {@link AdditiveLaw#NONE}.
 *
 * <p>Medium flow leaves the annulus evenly along its length and enters the center tube evenly; bypass flow of a far-end
 * valve runs through both. Momentum of the oil in the center tube is charged at its open end.
 *
 * @param inletHoles holes in the thread plate
 * @param antiDrainFlap forward law of the anti-drain flap
 * @param annulusResistance can annulus run through by the whole flow [1/m3], at least 0
 * @param elementResistance pleat pack [1/m3], above 0
 * @param tubeOpenings holes or louvres of the center tube
 * @param centerTube center tube run through by the whole flow
 * @param outletBore threaded outlet
 * @param elementValve bypass valve inside the filter
 * @param elementValveLocation {@code BASE} or {@code DOME}; {@code NONE} without element valve
 * @param blockValve bypass valve parallel to the whole filter
 */
public record FilterAssembly(
        PressureDropLaw inletHoles,
        PressureDropLaw antiDrainFlap,
        double annulusResistance,
        double elementResistance,
        AdditiveLaw tubeOpenings,
        AdditiveLaw centerTube,
        AdditiveLaw outletBore,
        Optional<SpringValve> elementValve,
        BypassLocation elementValveLocation,
        Optional<SpringValve> blockValve) {
    public FilterAssembly {
        Objects.requireNonNull(inletHoles, "inletHoles");
        Objects.requireNonNull(antiDrainFlap, "antiDrainFlap");
        Require.notNegative("annulusResistance", annulusResistance, "1/m3");
        Require.positive("elementResistance", elementResistance, "1/m3");
        Objects.requireNonNull(tubeOpenings, "tubeOpenings");
        Objects.requireNonNull(centerTube, "centerTube");
        Objects.requireNonNull(outletBore, "outletBore");
        boolean inElement = elementValveLocation == BypassLocation.BASE || elementValveLocation == BypassLocation.DOME;
        if (elementValve.isPresent() != inElement || elementValveLocation == BypassLocation.BLOCK) {
            throw new IllegalArgumentException(
                    "elementValveLocation must be BASE or DOME with an element valve and NONE without, was "
                            + elementValveLocation);
        }
        Objects.requireNonNull(blockValve, "blockValve");
    }

    /**
     * A filter of nothing but a pleat pack.
     *
     * @param elementResistance [1/m3]
     */
    public static FilterAssembly ofPack(double elementResistance) {
        return new FilterAssembly(
                AdditiveLaw.NONE,
                AdditiveLaw.NONE,
                0,
                elementResistance,
                AdditiveLaw.NONE,
                AdditiveLaw.NONE,
                AdditiveLaw.NONE,
                Optional.empty(),
                BypassLocation.NONE,
                Optional.empty());
    }

    /**
     * The same filter with another pack, for instance a loaded one.
     *
     * @param resistance [1/m3]
     */
    public FilterAssembly withElementResistance(double resistance) {
        return new FilterAssembly(
                inletHoles,
                antiDrainFlap,
                annulusResistance,
                resistance,
                tubeOpenings,
                centerTube,
                outletBore,
                elementValve,
                elementValveLocation,
                blockValve);
    }

    /**
     * The same filter with its bypass valve at a place. {@code BLOCK} sets the block valve and leaves the element valve;
     * {@code BASE} and {@code DOME} set the element valve and leave the block valve.
     */
    public FilterAssembly withBypass(BypassLocation location, SpringValve valve) {
        return switch (location) {
            case BASE, DOME -> withValves(Optional.of(valve), location, blockValve);
            case BLOCK -> withValves(elementValve, elementValveLocation, Optional.of(valve));
            case NONE -> throw new IllegalArgumentException("location of a bypass valve must not be NONE");
        };
    }

    /** The same filter with all bypass valves taken out. */
    public FilterAssembly withoutBypass() {
        return withValves(Optional.empty(), BypassLocation.NONE, Optional.empty());
    }

    /** The same filter whose valves have opened and are held open by friction down to their closing pressures. */
    public FilterAssembly afterOpening() {
        return withValves(
                elementValve.map(SpringValve::afterOpening),
                elementValveLocation,
                blockValve.map(SpringValve::afterOpening));
    }

    private FilterAssembly withValves(
            Optional<SpringValve> element, BypassLocation location, Optional<SpringValve> block) {
        return new FilterAssembly(
                inletHoles,
                antiDrainFlap,
                annulusResistance,
                elementResistance,
                tubeOpenings,
                centerTube,
                outletBore,
                element,
                location,
                block);
    }

    /**
     * State at a flow, all parts at one temperature.
     *
     * @param totalFlow flow through filter and bypass valves together [m3/s], any sign
     * @param fluid oil
     */
    public FilterState solve(double totalFlow, Fluid fluid) {
        return solve(totalFlow, fluid, fluid);
    }

    /**
     * State at a flow when the element has a temperature of its own.
     *
     * @param totalFlow flow through filter and bypass valves together [m3/s], any sign
     * @param fluid oil in everything but the pack
     * @param elementFluid oil in the pack
     */
    public FilterState solve(double totalFlow, Fluid fluid, Fluid elementFluid) {
        FilterSolver solver = new FilterSolver(this, elementFluid);
        solver.fill(fluid);
        solver.look(totalFlow, true);
        return solver.state();
    }

    /** Solves the filter at one flow and oil after another. */
    public FilterSolver solver() {
        return new FilterSolver(this, null);
    }

    /** The filter as one law of its total flow, for a circuit. */
    public PressureDropLaw law() {
        return new Law(this, null);
    }

    /** The filter as one law whose pack holds oil of its own temperature. */
    public PressureDropLaw law(Fluid elementFluid) {
        return new Law(this, Objects.requireNonNull(elementFluid));
    }

    /** View as a law; the pack's own fluid is null when it shares the others'. */
    private record Law(FilterAssembly filter, Fluid elementFluid) implements PressureDropLaw {
        @Override
        public Drop at(double flowRate, Fluid fluid) {
            FilterSolver solver = new FilterSolver(filter, elementFluid);
            solver.fill(fluid);
            solver.look(flowRate, true);
            return new Drop(solver.drop(), solver.slope());
        }

        @Override
        public DropFollower follower() {
            return new FilterSolver(filter, elementFluid);
        }

        @Override
        public double pressureDrop(double flowRate, Fluid fluid) {
            return at(flowRate, fluid).pressureDrop();
        }

        @Override
        public double slope(double flowRate, Fluid fluid) {
            return at(flowRate, fluid).slope();
        }
    }
}
