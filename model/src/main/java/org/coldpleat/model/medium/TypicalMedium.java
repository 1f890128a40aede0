package org.coldpleat.model.medium;

import java.util.EnumMap;
import java.util.Map;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.table.CsvTable;

/**
 * Typical ranges of a fiber family, each as an interval marked typical.
 *
 * @param basisWeight [kg/m2]
 * @param thickness [m]
 * @param airPermeability face velocity of air at 200 Pa and 20 C [m/s]
 * @param solidity [1]
 * @param fiberDensity with binder [kg/m3]
 * @param effectiveFiberDiameter that reproduces the air permeability in the law of Davies [m]
 * @param meanFlowPore diameter [m]
 */
@Source("common practice, no source; header of fiber_families.csv")
public record TypicalMedium(
        Measured basisWeight,
        Measured thickness,
        Measured airPermeability,
        Measured solidity,
        Measured fiberDensity,
        Measured effectiveFiberDiameter,
        Measured meanFlowPore) {
    private static final Map<FiberFamily, TypicalMedium> TABLE = read();

    static TypicalMedium of(FiberFamily family) {
        return TABLE.get(family);
    }

    /**
     * Resistance of the sheet [1/m] from the typical air permeability: log-normal about the geometric middle, the range
     * taken as rectangular in the logarithm.
     */
    @Source("JCGM 100:2008 (GUM), 4.3.7, applied to ln R")
    public Measured resistance() {
        double viscosity = AirViscosity.at(TEST_TEMPERATURE);
        double high =
                AirPermeability.resistance(AirPermeability.TECHNICAL_PRESSURE_DROP, viscosity, airPermeability.low());
        double low =
                AirPermeability.resistance(AirPermeability.TECHNICAL_PRESSURE_DROP, viscosity, airPermeability.high());
        double lnSigma = Math.log(high / low) / (2 * Math.sqrt(3));
        return Measured.factor(Kind.MEDIUM_RESISTANCE, Math.sqrt(low * high), lnSigma, Provenance.TYPICAL);
    }

    /** Temperature of a conditioned test room [K]. */
    @Source("ISO 139:2005, standard atmosphere 20 C (from memory)")
    private static final double TEST_TEMPERATURE = 293.15;

    private static Map<FiberFamily, TypicalMedium> read() {
        Map<FiberFamily, TypicalMedium> table = new EnumMap<>(FiberFamily.class);
        CsvTable.read(TypicalMedium.class, "fiber_families.csv", row -> row)
                .forEach(row -> table.put(FiberFamily.valueOf(row.text("family")), of(row)));
        return table;
    }

    private static TypicalMedium of(CsvTable.Row row) {
        return new TypicalMedium(
                interval(row, "basis_weight", "_g_m2", Kind.BASIS_WEIGHT, 1e-3),
                interval(row, "thickness", "_mm", Kind.LENGTH, 1e-3),
                interval(
                        row, "air_permeability", "", Kind.FACE_VELOCITY, AirPermeability.LITER_PER_SQUARE_METER_SECOND),
                interval(row, "solidity", "", Kind.FRACTION, 1),
                interval(row, "fiber_density", "_kg_m3", Kind.DENSITY, 1),
                interval(row, "effective_fiber_diameter", "_um", Kind.LENGTH, 1e-6),
                interval(row, "mean_flow_pore", "_um", Kind.LENGTH, 1e-6));
    }

    private static Measured interval(CsvTable.Row row, String name, String unitName, Kind kind, double unit) {
        return Measured.between(
                kind,
                row.number(name + "_low" + unitName) * unit,
                row.number(name + "_high" + unitName) * unit,
                Provenance.TYPICAL);
    }
}
