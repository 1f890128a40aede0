package org.coldpleat.ui.chart.cutaway;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.model.steady.PointResult;

/**
 * Pressure in the rooms of a filter, above its outlet over its pressure drop [0..1].
 *
 * @param inlet before the inlet holes
 * @param dirty round the element
 * @param behindMedium between medium and center tube
 * @param tube inside the center tube
 */
record Pressures(double inlet, double dirty, double behindMedium, double tube) {
    static Pressures of(PointResult point) {
        if (!(point.pressureDrop() > 0)) {
            return new Pressures(0, 0, 0, 0);
        }
        Map<String, Double> drops = point.parts().stream()
                .collect(Collectors.toMap(
                        PointResult.Part::name, part -> part.pressureDrop() / point.pressureDrop(), Double::sum));
        double tube = sum(drops, List.of("CENTER_TUBE", "OUTLET_BORE"));
        double behind = tube + sum(drops, List.of("TUBE_OPENINGS"));
        double dirty = behind + sum(drops, List.of("PLEAT_PACK", "CAN_ANNULUS"));
        return new Pressures(1, dirty, behind, tube);
    }

    private static double sum(Map<String, Double> drops, List<String> parts) {
        return parts.stream().mapToDouble(part -> drops.getOrDefault(part, 0.0)).sum();
    }
}
