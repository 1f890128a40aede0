package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityFormatTest {
    private static Measured read(String text, Kind kind) {
        return QuantityText.parse(text, kind, Provenance.MEASURED).value().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "36.8 mm ± 0.2 mm | LENGTH | METRIC | 36.80 ± 0.20 mm",
                "36.8 mm ± 0.0999 mm | LENGTH | METRIC | 36.80 ± 0.10 mm",
                "36.8 mm ± 0.2 mm | LENGTH | SI | 0.03680 ± 0.00020 m",
                "36.8 mm ± 0.2 mm | LENGTH | US | 1.4488 ± 0.0079 in",
                "2-3/8\" | LENGTH | METRIC | 60.33 mm",
                "60,5 mm | LENGTH | METRIC | 60.50 mm",
                "12 psi | PRESSURE_DIFFERENCE | METRIC | 82.74 kPa",
                "12 to 15 psi | PRESSURE_DIFFERENCE | US | 13.5 ± 1.5 psi",
                "5 gpm | FLOW_RATE | METRIC | 18.93 L/min",
                "41F | TEMPERATURE | METRIC | 5.000 °C",
                "-20 °C ± 2 °C | TEMPERATURE | METRIC | -20.0 ± 2.0 °C",
                "-20 °C ± 2 °C | TEMPERATURE | US | -4.0 ± 3.6 °F",
                "48 | COUNT | METRIC | 48",
                "48 ± 1 | COUNT | METRIC | 48.0 ± 1.0",
                "70 % ± 15 % | FRACTION | METRIC | (70 ± 15) %",
                "2.5e8 1/m | MEDIUM_RESISTANCE | METRIC | 2.500e8 1/m",
                "2.5e8 1/m ± 10 % | MEDIUM_RESISTANCE | METRIC | (2.50 ± 0.25)e8 1/m",
                "15 um | LENGTH | METRIC | 15.00 µm",
                "17500 mPa·s | DYNAMIC_VISCOSITY | METRIC | 17500 mPa·s",
                "12345 mPa·s ± 1200 mPa·s | DYNAMIC_VISCOSITY | METRIC | 12300 ± 1200 mPa·s",
            })
    void digitsFollowTheUncertainty(String text, Kind kind, UnitSystem system, String expected) {
        assertEquals(expected, QuantityFormat.format(read(text, kind), system));
    }

    @Test
    void printsIntervalsAsBands() {
        assertEquals(
                "12.0 to 15.0 psi", QuantityFormat.band(read("12-15 psi", Kind.PRESSURE_DIFFERENCE), UnitSystem.US));
        assertEquals("-22.0 to -18.0 °C", QuantityFormat.band(251.15, 255.15, Kind.TEMPERATURE, UnitSystem.METRIC));
        assertEquals("5.000 mm", QuantityFormat.band(0.005, 0.005, Kind.LENGTH, UnitSystem.METRIC));
    }

    @Test
    void printsValueKnownWithinFactorAsBand() {
        Measured factor = Measured.factor(Kind.MEDIUM_RESISTANCE, 4e7, Math.log(2) / 1.96, Provenance.TYPICAL);
        assertEquals("2.0e7 to 8.0e7 1/m", QuantityFormat.format(factor, UnitSystem.METRIC));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatIsPrintedCanBeReadBack(Kind kind) {
        for (UnitSystem system : UnitSystem.values()) {
            double si = kind == Kind.COUNT ? 7 : kind == Kind.TEMPERATURE ? 283.12 : 0.3217;
            String text = QuantityFormat.format(si, kind, system);
            // Four printed digits: at most half of the fourth, of a number that may begin with 1.
            double tolerance = kind == Kind.TEMPERATURE ? 0.05 : 6e-4 * si;
            assertEquals(si, read(text, kind).value(), tolerance, text);
        }
    }

    @Test
    void refusesToPrintWhatIsNoNumber() {
        assertThrows(
                IllegalArgumentException.class,
                () -> QuantityFormat.format(Double.NaN, Kind.LENGTH, UnitSystem.METRIC));
        assertThrows(IllegalArgumentException.class, () -> QuantityFormat.band(2, 1, Kind.LENGTH, UnitSystem.METRIC));
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.01, mm, in",
        "AREA, 0.09, cm2, in2",
        "VOLUME, 0.005, L, qt",
        "MASS, 0.02, g, g",
        "MASS_RATE, 1e-9, mg/h, mg/h",
        "TEMPERATURE, 300, °C, °F",
        "TEMPERATURE_DIFFERENCE, 10, K, °F",
        "PRESSURE_DIFFERENCE, 1e5, kPa, psi",
        "GAUGE_PRESSURE, 1e5, kPa, psi",
        "FLOW_RATE, 2e-4, L/min, gpm",
        "DISPLACEMENT, 1e-5, cm3/rev, in3/rev",
        "ROTATION, 30, rpm, rpm",
        "KINEMATIC_VISCOSITY, 1e-4, mm2/s, cSt",
        "DYNAMIC_VISCOSITY, 0.1, mPa·s, cP",
        "DENSITY, 870, kg/m3, lb/ft3",
        "BASIS_WEIGHT, 0.15, g/m2, lb/3000ft2",
        "MEDIUM_RESISTANCE, 3e7, 1/m, 1/m",
        "PERMEABILITY, 3e-11, um2, darcy",
        "FACE_VELOCITY, 0.01, mm/s, ft/min",
        "LAMINAR_RESISTANCE, 1e9, 1/m3, 1/m3",
        "SPRING_RATE, 1500, N/mm, lbf/in",
        "SURFACE_TENSION, 0.03, mN/m, dyn/cm",
        "FORCE, 10, N, lbf",
        "STRESS, 3e7, MPa, psi",
        "OVERRIDE, 1e8, kPa/(L/min), psi/gpm",
        "SLIP, 1e-12, mm3, in3",
        "HEAT_CONDUCTANCE, 5, W/K, BTU/(h °F)",
        "POWER, 1500, kW, hp",
        "HEAT_CAPACITY, 20000, kJ/K, BTU/°F",
        "ANGLE, 1, deg, deg",
        "FRACTION, 0.5, %, %",
        "COUNT, 50, 1, 1",
        "RATIO, 2, 1, 1",
    })
    void eachKindIsShownInTheUnitsOfItsTrade(Kind kind, double si, String metric, String us) {
        assertEquals(metric, UnitSystem.METRIC.unit(kind, si).symbol());
        assertEquals(us, UnitSystem.US.unit(kind, si).symbol());
        assertEquals(
                kind == Kind.FRACTION ? metric : Units.of(kind).get(0).symbol(),
                UnitSystem.SI.unit(kind, si).symbol());
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 99e-6, um",
        "LENGTH, -99e-6, um",
        "LENGTH, 100e-6, mm",
        "LENGTH, 0, mm",
        "VOLUME, 99e-6, mL",
        "VOLUME, 100e-6, L",
        "VOLUME, 0, L",
        "FLOW_RATE, 9e-9, mL/h",
        "FLOW_RATE, 1e-8, L/min",
        "FLOW_RATE, 0, L/min",
        "DURATION, 0, s",
        "DURATION, 179, s",
        "DURATION, 180, min",
        "DURATION, 10799, min",
        "DURATION, 10800, h",
    })
    void smallAmountsTakeTheSmallerUnitAndNothingTakesTheUsualOne(Kind kind, double si, String symbol) {
        assertEquals(symbol, UnitSystem.METRIC.unit(kind, si).symbol());
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.001, 0.001000", "0.000999, 9.990e-4", "999900, 999900", "1000000, 1.000e6", "-2, -2.000"})
    void aPowerOfTenIsTakenOutOfVeryLargeAndVerySmallNumbers(double number, String text) {
        assertEquals(text, QuantityFormat.format(number, Kind.RATIO, UnitSystem.METRIC));
    }

    @Test
    void valueWithoutWidthIsShownWithoutPlusMinus() {
        assertEquals("0 mm", QuantityFormat.format(0, 0, Kind.LENGTH, UnitSystem.METRIC));
        assertEquals("5.000 mm", QuantityFormat.format(0.005, 0, Kind.LENGTH, UnitSystem.METRIC));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyWayToPrintRefusesWhatIsNotFinite(UnitSystem system) {
        double nan = Double.NaN;
        assertRefused(() -> QuantityFormat.format(nan, Kind.FORCE, system));
        assertRefused(() -> QuantityFormat.format(nan, 1, Kind.FORCE, system));
        assertRefused(() -> QuantityFormat.format(1, Double.POSITIVE_INFINITY, Kind.FORCE, system));
        assertRefused(() -> QuantityFormat.band(Double.NEGATIVE_INFINITY, 1, Kind.FORCE, system));
        assertRefused(() -> QuantityFormat.band(1, nan, Kind.FORCE, system));
    }

    private static void assertRefused(Runnable print) {
        String message =
                assertThrows(IllegalArgumentException.class, print::run).getMessage();
        assertTrue(message.contains("FORCE") && message.contains("finite"), message);
    }
}
