package org.coldpleat.model.steady;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.notice.Notice;

/**
 * One operating point with the full breakdown; SI throughout.
 *
 * @param candidate name of the candidate
 * @param setting {@code engine} or {@code flowStand}
 * @param state name of the state, or empty for a flow given by hand
 * @param status status of the solution
 * @param temperature oil temperature [K]
 * @param flow flow through the filter [m3/s]
 * @param pressureDrop drop of the whole filter [Pa]
 * @param elementPressureDrop drop of the pleat pack [Pa]
 * @param parts drops of the parts in the order of the flow
 * @param bypass what the bypass valve does; empty without a valve
 * @param oil oil at that temperature
 * @param engine what else an engine circuit knows; empty on a flow stand
 * @param flowResidual imbalance of the flows over the filter flow [1]
 * @param pressureResidual imbalance of the pressures over the filter drop [1]
 * @param notices findings that go with the point
 */
public record PointResult(
        String candidate,
        String setting,
        String state,
        String status,
        double temperature,
        double flow,
        double pressureDrop,
        double elementPressureDrop,
        List<Part> parts,
        Optional<Bypass> bypass,
        OilPoint oil,
        Optional<EnginePoint> engine,
        double flowResidual,
        double pressureResidual,
        List<Notice> notices) {
    public PointResult {
        parts = List.copyOf(parts);
        notices = List.copyOf(notices);
    }

    /**
     * Drop of one part.
     *
     * @param name key of the part
     * @param pressureDrop [Pa]
     */
    public record Part(String name, double pressureDrop) {}

    /**
     * State of the bypass valve that opens first.
     *
     * @param open true if the difference exceeds the opening pressure
     * @param flow flow round the medium through all bypass valves [m3/s]
     * @param share that flow over the filter flow [1]
     * @param pressureDrop what the faces of the valve see [Pa]
     * @param openingPressure [Pa]
     * @param liftShare lift of that valve over its largest lift [0..1]
     */
    public record Bypass(
            boolean open, double flow, double share, double pressureDrop, double openingPressure, double liftShare) {}

    /**
     * Oil at the temperature of the point.
     *
     * @param kinematicViscosity [m2/s]
     * @param dynamicViscosity [Pa s]
     * @param density [kg/m3]
     */
    public record OilPoint(double kinematicViscosity, double dynamicViscosity, double density) {}

    /**
     * The rest of an engine circuit.
     *
     * @param pumpPressure gauge pressure at the pump outlet [Pa]
     * @param galleryPressure gauge pressure in the main gallery [Pa]
     * @param pumpFlow delivery of the pump [m3/s]
     * @param reliefFlow flow back through the relief valves [m3/s]
     * @param galleryFlow flow into the gallery [m3/s]
     * @param filmTemperature mean temperature of the bearing films [K]
     */
    public record EnginePoint(
            double pumpPressure,
            double galleryPressure,
            double pumpFlow,
            double reliefFlow,
            double galleryFlow,
            double filmTemperature) {}
}
