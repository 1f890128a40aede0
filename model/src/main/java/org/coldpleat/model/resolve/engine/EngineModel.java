package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.valve.SpringValve;

/**
 * The engine of a case in computing form. Speeds of pump, gallery side flow and film friction are those of the pump.
 *
 * @param pump pump
 * @param reliefs relief valves
 * @param gallery everything behind the filter
 * @param blockValve bypass valve in the engine block
 * @param pumpTurns pump turns per engine turn [1]
 * @param laminarShare laminar share of the gallery drop at the hot reading [1], if the gallery was described by one
 */
public record EngineModel(
        Pump pump,
        List<Relief> reliefs,
        Gallery gallery,
        Optional<SpringValve> blockValve,
        double pumpTurns,
        OptionalDouble laminarShare) {
    public EngineModel {
        reliefs = List.copyOf(reliefs);
    }
}
