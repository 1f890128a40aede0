package org.coldpleat.model.circuit;

import java.util.List;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * Gallery described by bearing geometry.
 *
 * @param seriesResistance of the passages before the bearings [1/m3], at least 0
 * @param bearings one entry for each kind of bearing, with how many there are
 * @param restrictors jets and restrictors
 * @param metalConductance from all films to the metal around them [W/K], at least 0
 * @param filmPosition where between inlet and outlet temperature the film is taken [1], 0 to 1
 */
public record GalleryFromBearings(
        double seriesResistance,
        List<BearingGroup> bearings,
        List<Restrictor> restrictors,
        double metalConductance,
        double filmPosition) {
    /** Thermal conductivity of engine oil [W/(m K)]. */
    @Source("common practice, no source: 0.13 to 0.14 for mineral oils")
    private static final double OIL_CONDUCTIVITY = 0.135;

    /** Conductance from film to metal over that of one wall of the film alone [1]: the metal around takes heat up slower. */
    @Source("spreading into housings in series with film and shell, over usual journals; derived here, 0.29 to 0.97")
    private static final double METAL_SHARE = 0.5;

    public GalleryFromBearings {
        bearings = List.copyOf(bearings);
        restrictors = List.copyOf(restrictors);
    }

    /**
     * Equal bearings.
     *
     * @param bearing one of them
     * @param count how many [1], above 0
     * @param pumpingLength length that pumps oil out of the ends [m], at least 0; 0 leaves the side flow out
     */
    public record BearingGroup(GroovedBearing bearing, double count, double pumpingLength) {
        public BearingGroup {
            Require.positive("count", count, "1");
            Require.notNegative("pumpingLength", pumpingLength, "m");
        }
    }

    /** The gallery in computing form. */
    public Gallery resolve() {
        return new Gallery(seriesResistance, together(), restrictors);
    }

    /** All bearings together. */
    public Bearings together() {
        Bearings sum = new Bearings(0, 0, 0, metalConductance, filmPosition);
        for (BearingGroup group : bearings) {
            GroovedBearing one = group.bearing();
            double pumped = group.pumpingLength() == 0 ? 0 : one.sideFlow(group.pumpingLength());
            double n = group.count();
            sum = sum.plus(new Bearings(n * one.conductance(), n * pumped, n * one.friction(), 0, filmPosition));
        }
        return sum;
    }

    /** What bearings of this shape conduct from their films to the metal [W/K], within a factor of 3. */
    public static double usualMetalConductance(List<BearingGroup> groups) {
        double sum = 0;
        for (BearingGroup group : groups) {
            sum += group.count() * group.bearing().areaOverClearance();
        }
        return METAL_SHARE * OIL_CONDUCTIVITY * sum;
    }
}
