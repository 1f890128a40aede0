package org.coldpleat.ui.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.change.Design;

/**
 * What a candidate is as it stands, best values of all that its sheet and its tests say.
 *
 * @param valve its own bypass valve; empty without one
 * @param grossArea unfolded medium, one side [m2]
 * @param freeShare share of it that no cap or glue bead hides [1]
 * @param foldShare share of the strip that the folds take [1]; 0 if the strip was not measured
 * @param mediumResistance [1/m]
 */
public record Present(
        Optional<Valve> valve, double grossArea, double freeShare, double foldShare, double mediumResistance) {
    /**
     * A bypass valve.
     *
     * @param openingPressure [Pa]
     * @param closingPressure [Pa]
     * @param springRate [N/m]
     */
    public record Valve(double openingPressure, double closingPressure, double springRate) {}

    static Present of(Design design) {
        return new Present(
                design.filter()
                        .elementValve()
                        .map(valve -> new Valve(valve.openingPressure(), valve.closingPressure(), valve.springRate())),
                design.grossArea(),
                design.freeShare(),
                design.foldShare(),
                design.mediumResistance());
    }

    /** Opening pressure of its own bypass valve [Pa]; empty without one. */
    public OptionalDouble openingPressure() {
        return valve.isPresent() ? OptionalDouble.of(valve.get().openingPressure()) : OptionalDouble.empty();
    }
}
