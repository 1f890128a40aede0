package org.coldpleat.model.medium;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

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
        for (String line : lines()) {
            if (line.isBlank() || line.startsWith("#") || line.startsWith("family,")) {
                continue;
            }
            String[] cells = line.split(",", -1);
            table.put(
                    FiberFamily.valueOf(cells[0]),
                    new TypicalMedium(
                            interval(cells, 1, Kind.BASIS_WEIGHT, 1e-3),
                            interval(cells, 3, Kind.LENGTH, 1e-3),
                            interval(cells, 5, Kind.FACE_VELOCITY, AirPermeability.LITER_PER_SQUARE_METER_SECOND),
                            interval(cells, 7, Kind.FRACTION, 1),
                            interval(cells, 9, Kind.DENSITY, 1),
                            interval(cells, 11, Kind.LENGTH, 1e-6),
                            interval(cells, 13, Kind.LENGTH, 1e-6)));
        }
        return table;
    }

    private static Measured interval(String[] cells, int column, Kind kind, double unit) {
        return Measured.between(
                kind,
                Double.parseDouble(cells[column]) * unit,
                Double.parseDouble(cells[column + 1]) * unit,
                Provenance.TYPICAL);
    }

    private static List<String> lines() {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                TypicalMedium.class.getResourceAsStream("fiber_families.csv"), StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
