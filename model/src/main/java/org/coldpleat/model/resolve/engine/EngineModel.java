package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.valve.SpringValve;

/**
 * The engine of a case in computing form. Speeds of pump, gallery side flow and film friction are those of the pump.
 *
 * @param pump pump
 * @param reliefs relief valves
 * @param gallery everything behind the filter
 * @param blockValve bypass valve in the engine block
 * @param pumpTurns pump turns per engine turn [1]
 * @param soakedLead how much warmer than the oil the metal is in a start [K]
 * @param runningLead the same in running [K]
 * @param laminarShare laminar share of the gallery drop at the hot reading [1], if the gallery was described by one
 */
public record EngineModel(
        Pump pump,
        List<Relief> reliefs,
        Gallery gallery,
        Optional<SpringValve> blockValve,
        double pumpTurns,
        double soakedLead,
        double runningLead,
        OptionalDouble laminarShare) {
    public EngineModel {
        reliefs = List.copyOf(reliefs);
    }

    /** How much warmer than the oil the metal around the bearings is [K]. */
    public double metalLead(OperatingState.Metal metal) {
        return metal == OperatingState.Metal.RUNNING ? runningLead : soakedLead;
    }

    /** The same engine with another bypass valve in its block, or none. */
    public EngineModel withBlockValve(Optional<SpringValve> other) {
        return new EngineModel(pump, reliefs, gallery, other, pumpTurns, soakedLead, runningLead, laminarShare);
    }
}
