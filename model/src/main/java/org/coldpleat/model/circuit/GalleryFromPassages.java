package org.coldpleat.model.circuit;

import java.util.List;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Require;

/**
 * Gallery described by its passages: drillings in series, then clearances and restrictors side by side.
 *
 * @param drillings passages run through one after the other; only their laminar resistance counts
 * @param clearanceResistances leaks past bearings and other laminar gaps, side by side [1/m3], each above 0
 * @param restrictors jets and restrictors
 */
public record GalleryFromPassages(
        List<AdditiveLaw> drillings, List<Double> clearanceResistances, List<Restrictor> restrictors) {
    public GalleryFromPassages {
        drillings = List.copyOf(drillings);
        clearanceResistances = List.copyOf(clearanceResistances);
        restrictors = List.copyOf(restrictors);
    }

    /** The gallery in computing form; films have the temperature of the sump. */
    public Gallery resolve() {
        double series = 0;
        for (AdditiveLaw drilling : drillings) {
            series += drilling.laminar();
        }
        double conductance = 0;
        for (double resistance : clearanceResistances) {
            conductance += 1 / Require.positive("clearanceResistance", resistance, "1/m3");
        }
        return new Gallery(series, Bearings.isothermal(conductance), restrictors);
    }
}
