package org.coldpleat.model.circuit;

import java.util.List;
import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * Everything behind the filter: a laminar passage, then in parallel the bearings and the restrictors. The pressure gauge
 * sits before the passage.
 *
 * @param seriesResistance of the passage [1/m3], at least 0
 * @param bearings all bearings together
 * @param restrictors jets and restrictors, one entry for each kind
 */
public record Gallery(double seriesResistance, Bearings bearings, List<Restrictor> restrictors) {
    public Gallery {
        Require.notNegative("seriesResistance", seriesResistance, "1/m3");
        Objects.requireNonNull(bearings, "bearings");
        restrictors = List.copyOf(restrictors);
        double open = bearings.conductance();
        for (Restrictor restrictor : restrictors) {
            open += restrictor.count();
        }
        Require.positive("conductance of bearings plus count of restrictors", open, "(m3, 1)");
    }

    /** A gallery that is one laminar resistance at sump viscosity [1/m3]. */
    public static Gallery laminar(double resistance) {
        return new Gallery(0, Bearings.isothermal(1 / Require.positive("resistance", resistance, "1/m3")), List.of());
    }

    /**
     * Resistance psi_g of the gallery in the limit of creeping flow [1/m3], check valves open.
     *
     * @param filmViscosityRatio film over sump viscosity [1], above 0; 1 for films as cold as the sump
     */
    public double creepingResistance(double filmViscosityRatio) {
        double conductance = bearings.conductance() / Require.positive("filmViscosityRatio", filmViscosityRatio, "1");
        for (Restrictor restrictor : restrictors) {
            conductance += restrictor.count() / restrictor.one().laminar();
        }
        return seriesResistance + 1 / conductance;
    }
}
