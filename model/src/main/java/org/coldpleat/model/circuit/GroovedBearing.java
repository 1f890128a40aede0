package org.coldpleat.model.circuit;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Journal bearing fed through a groove all around, with a land on either side.
 *
 * <p>Example: 60 mm, clearance 30 um, lands 8 mm, eccentricity 0.6, 0.01 Pa s, 300 kPa: 0.294 L/min.
 *
 * @param diameter of the journal [m], above 0
 * @param radialClearance c [m], above 0
 * @param landLength of each of the two lands [m], above 0
 * @param eccentricity e, eccentricity ratio [1], 0 to below 1
 */
@Source("narrow-gap flow through two lands, exact; same as the DIN 31652 / ISO 7902 form by algebra; derived here")
@Validity("laminar; clearance much smaller than the radius")
public record GroovedBearing(double diameter, double radialClearance, double landLength, double eccentricity) {
    public GroovedBearing {
        Require.positive("diameter", diameter, "m");
        Require.positive("radialClearance", radialClearance, "m");
        Require.positive("landLength", landLength, "m");
        Require.within("eccentricity", eccentricity, 0, Math.nextDown(1.0), "1");
    }

    /** Flow times viscosity over feed pressure [m3]: {@code pi D c^3 (1 + 1.5 e^2)/(6 l)}. */
    public double conductance() {
        return Math.PI
                * diameter
                * Math.pow(radialClearance, 3)
                * (1 + 1.5 * eccentricity * eccentricity)
                / (6 * landLength);
    }

    /**
     * Oil the journal pumps out of the ends per revolution [m3]: {@code 2 pi R c L e} (short bearing).
     *
     * @param length L that pumps [m], above 0
     */
    public double sideFlow(double length) {
        return Math.PI * diameter * radialClearance * Require.positive("length", length, "m") * eccentricity;
    }

    /** Friction geometry {@code 2 pi R^3 L/c} of both lands [m3] (Petroff). */
    public double friction() {
        return 2 * Math.PI * Math.pow(diameter / 2, 3) * 2 * landLength / radialClearance;
    }

    /** Sheared area over clearance {@code 2 pi R L/c} of both lands [m]: times the conductivity of oil, what one wall takes up. */
    public double areaOverClearance() {
        return Math.PI * diameter * 2 * landLength / radialClearance;
    }
}
