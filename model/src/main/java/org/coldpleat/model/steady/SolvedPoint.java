package org.coldpleat.model.steady;

import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;

/**
 * One candidate in one duty at one temperature.
 *
 * @param point of the circuit
 * @param filter state of the filter at the flow of the point
 * @param fluid oil
 */
public record SolvedPoint(OperatingPoint point, FilterState filter, Fluid fluid) {
    /** The point of the circuit as a start for one nearby, if its numbers may be used. */
    public Optional<OperatingPoint> near() {
        return isAnswer() ? Optional.of(point) : Optional.empty();
    }

    /** Whether the numbers may be used. */
    public boolean isAnswer() {
        return point.status().isAnswer() && filter.converged();
    }

    /** How the solution ended: a converged point may have a starved gallery or a pump that its pickup limits. */
    public String status() {
        if (!isAnswer()) {
            return filter.converged() ? point.status().name() : "NOT_CONVERGED";
        }
        if (point.status() == SolveStatus.CONVERGED && point.galleryStarved()) {
            return "STARVED_GALLERY";
        }
        return point.status() == SolveStatus.CONVERGED && point.suctionLimited()
                ? "SUCTION_LIMITED"
                : point.status().name();
    }
}
