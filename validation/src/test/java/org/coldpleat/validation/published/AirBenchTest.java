package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.Air;
import org.coldpleat.model.bench.AirTest;
import org.coldpleat.model.bench.BenchEstimate;
import org.coldpleat.model.medium.AirViscosity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air readings in the units of the fabric standards, and the air itself. */
class AirBenchTest {
    private static BenchEstimate evaluate(double pressure, double velocity, Air air, boolean suction) {
        double area = 20e-4;
        AirTest.Readings readings = new AirTest.Readings(
                List.of(new AirTest.Row(pressure, velocity * area)),
                List.of(new AirTest.Row(pressure, 0)),
                Measured.exact(Kind.AREA, area, Provenance.MEASURED),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                0.01,
                suction);
        return AirTest.evaluate(readings, air);
    }

    /**
     * Face velocity at a pressure drop, 20 cm2 (ISO 9237:1995), with air of 1.82e-5 Pa s; resistances derived here.
     * 0.15 %: half the pressure difference over the air pressure, which the expansion correction takes into account.
     */
    @ParameterizedTest
    @CsvSource({"200,0.400,2.747e7", "200,0.150,7.326e7", "200,0.060,1.832e8", "124.5,0.1016,6.733e7"})
    void resistanceFromFaceVelocity(double pressure, double velocity, double resistance) {
        Air air = new Air(101_325, 1.82e-5, 1.2, 6.6e-8);
        assertEquals(
                resistance,
                evaluate(pressure, velocity, air, false).value().orElseThrow().value(),
                0.0015 * resistance);
    }

    /** 10 cfm/ft2 at 0.5 in of water through 0.8 mm: k = 5.94e-12 m2 (derived here). */
    @Test
    void permeabilityFromCubicFeet() {
        Air air = new Air(101_325, 1.82e-5, 1.2, 6.6e-8);
        double r =
                evaluate(124.54, 10 * 5.08e-3, air, false).value().orElseThrow().value();
        assertEquals(5.94e-12, 0.8e-3 / r, 0.01e-12);
    }

    /**
     * Ideal gas in Darcy flow: mass flow goes with the difference of the squares of the pressures (textbook; Muskat 1937).
     * Both ways of metering the same mass flow must give the same medium.
     */
    @ParameterizedTest
    @CsvSource({"200", "2000", "8000"})
    void expansionFollowsTheSquaresOfPressure(double drop) {
        Air air = new Air(100_000, 1.8e-5, 1.2, 6.6e-8);
        double resistance = 5e8;
        double before = 100_000 + drop;
        double blown = (before * before - 1e10) / (2 * 100_000 * 1.8e-5 * resistance);
        double after = 100_000 - drop;
        double sucked = (1e10 - after * after) / (2 * after * 1.8e-5 * resistance);
        assertEquals(
                resistance,
                evaluate(drop, blown, air, false).value().orElseThrow().value(),
                1e-8 * resistance);
        assertEquals(
                resistance,
                evaluate(drop, sucked, air, true).value().orElseThrow().value(),
                1e-8 * resistance);
    }

    /** U.S. Standard Atmosphere 1976 at sea level, 288.15 K: viscosity 1.7894e-5 Pa s, density 1.2250 kg/m3. */
    @Test
    void standardAtmosphere() {
        Air air = Air.at(288.15, 101_325, AirViscosity::at);
        assertEquals(1.7894e-5, air.dynamicViscosity(), 0.0001e-5);
        assertEquals(1.2250, air.density(), 0.0001);
    }

    /**
     * Jennings 1988, J. Aerosol Sci. 19:159: 65.43 nm in dry air at 20 degC and 101.325 kPa, by the same kinetic route
     * with the number 0.4987 for 1/2 and another viscosity formula, hence 1 % (value from memory). The standard atmosphere
     * states 66.33 nm at 15 degC from an effective collision diameter instead, 4 % more than the kinetic route there.
     */
    @Test
    void meanFreePath() {
        assertEquals(65.43e-9, Air.at(293.15, 101_325, AirViscosity::at).meanFreePath(), 0.65e-9);
    }
}
