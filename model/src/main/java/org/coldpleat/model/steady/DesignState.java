package org.coldpleat.model.steady;

import org.coldpleat.model.change.Design;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;

/**
 * A design in one state: values over oil temperature. Starts each point from the one before, so ask from warm to cold or
 * from cold to warm. Work object of one thread.
 */
public final class DesignState {
    /** A medium that lets nothing through. */
    static final DesignState PLUGGED = new DesignState(null);

    private final StateModel model;
    private StateSolver solver;
    private StateSolver heldShut;

    DesignState(StateModel model) {
        this.model = model;
    }

    /**
     * A design in a state of the case, given by its position.
     *
     * @param resolved the case it was made from
     */
    public static DesignState of(Design design, ResolvedCase resolved, int operatingState) {
        return of(design, resolved.operatingStates().get(operatingState));
    }

    public static DesignState of(Design design, OperatingState operatingState) {
        double resistance = design.packResistance();
        return Double.isInfinite(resistance)
                ? PLUGGED
                : new DesignState(new StateModel(
                        design.shared(),
                        design.filter().withElementResistance(resistance),
                        design.operatingState(operatingState)));
    }

    /** True if any bypass valve acts on the filter of a design in a state. */
    public static boolean hasValve(Design design, OperatingState operatingState) {
        return new StateModel(design.shared(), design.filter(), design.operatingState(operatingState)).hasValve();
    }

    /** True if a bypass valve acts. */
    public boolean hasValve() {
        return model == null || model.hasValve();
    }

    /**
     * Difference across the valve held shut over its opening pressure [1]; above 1 it is open. NaN without an answer.
     *
     * @param temperature of the oil [K]
     */
    public double valveRatio(double temperature) {
        if (model == null) {
            return Double.POSITIVE_INFINITY;
        }
        heldShut = heldShut == null ? model.heldShutSolver() : heldShut;
        return heldShut.ratioAt(temperature);
    }

    /** Share of the oil that goes round the medium [1]. NaN without an answer. */
    public double bypassShare(double temperature) {
        if (model == null) {
            return 1;
        }
        return answers(temperature) ? solver.bypassShare() : Double.NaN;
    }

    /** What the medium must bear [Pa]. NaN without an answer. */
    public double elementDrop(double temperature) {
        if (model == null) {
            return Double.POSITIVE_INFINITY;
        }
        return answers(temperature) ? solver.elementDrop() : Double.NaN;
    }

    private boolean answers(double temperature) {
        solver = solver == null ? model.solver() : solver;
        return solver.at(temperature);
    }

    /**
     * Warmest oil temperature at which the valve is open [K]; negative infinity if never or without a valve, positive
     * infinity if still open at the warm end, NaN without an answer.
     */
    public double opening(double from, double to) {
        if (model == null) {
            return Double.POSITIVE_INFINITY;
        }
        return model.hasValve() ? new WarmestOpening(model, from, to).find() : Double.NEGATIVE_INFINITY;
    }
}
