package org.coldpleat.model.run;

import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;

/**
 * One candidate in one duty at one temperature.
 *
 * @param point of the circuit
 * @param filter state of the filter at the flow of the point
 * @param fluid oil
 */
record SolvedPoint(OperatingPoint point, FilterState filter, Fluid fluid) {
    /** Whether the numbers may be used. */
    boolean isAnswer() {
        return point.status().isAnswer() && filter.converged();
    }
}
