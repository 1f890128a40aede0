package org.coldpleat.model.sizing;

import org.coldpleat.model.change.Design;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.DesignState;

/**
 * Greatest pressure that the medium of a filter must bear.
 *
 * @param pressure [Pa]; NaN without an answer
 * @param temperature of the oil [K]
 * @param state name of the state
 */
public record ElementPeak(double pressure, double temperature, String state) {
    private static final double STEP = 2.5;

    private static final ElementPeak NONE = new ElementPeak(Double.NaN, Double.NaN, "");

    /** Over all states of a case and the whole range of oil temperature, valves acting. */
    static ElementPeak overRange(ResolvedCase resolved, Design design) {
        ElementPeak peak = NONE;
        int cells = (int) Math.ceil((resolved.to() - resolved.from()) / STEP);
        for (OperatingState operatingState : resolved.operatingStates()) {
            DesignState state = DesignState.of(design, operatingState);
            for (int i = cells; i >= 0; i--) {
                double at = resolved.from() + (resolved.to() - resolved.from()) * i / cells;
                double drop = state.elementDrop(at);
                if (!Double.isNaN(drop) && !(drop <= peak.pressure())) {
                    peak = new ElementPeak(drop, at, operatingState.name());
                }
            }
        }
        return peak;
    }
}
