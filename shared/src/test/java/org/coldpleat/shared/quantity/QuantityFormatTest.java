package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
                "15 um | LENGTH | METRIC | 15.00 um",
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
}
