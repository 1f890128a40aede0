package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Amounts of sentences in three families of units; expected texts converted by hand with the factors of {@link Units}. */
class LookTest {
    private static final Pattern NOT_US =
            Pattern.compile("°C|kPa|MPa|[cm]m²|m²|\\bmm\\b|L/min|mL|\\bL\\b|mg|\\bK\\b|mPa|kg|N/mm");
    private static final Pattern US = Pattern.compile("°F|psi|\\bin\\b|in²|qt|oz|gpm|cSt|cP|lb|ksi");

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 70e3, 70 kPa (10.2 psi), 10.2 psi, 70 kPa",
        "TEMPERATURE, 263.15, -10 °C (14 °F), 14 °F, 263.2 K",
        "TEMPERATURE, 255.3722, -17.8 °C (0 °F), 0 °F, 255.4 K",
        "DIFFERENCE, 18, 18.0 K, 32 °F, 18.0 K",
        "DIFFERENCE, 0.5, 0.5 K, 0.9 °F, 0.5 K",
        "AREA, 0.0974, 974 cm² (151 in²), 151 in², 0.0974 m²",
        "STRESS, 33e6, 33 MPa, 4.8 ksi, 33 MPa",
        "VOLUME, 9.14e-5, 91.4 mL, 3.09 fl oz, 91.4 mL",
        "VOLUME, 6.7e-3, 6.70 L, 7.08 qt, 6.70 L",
        "FLOW, 1e-4, 6.0 L/min, 1.59 gpm, 6.0 L/min",
        "DURATION, 3.2, 3.2 s, 3.2 s, 3.2 s",
        "DURATION, 1802, 30 min 02 s, 30 min 02 s, 30 min 02 s",
        "DURATION, 7260, 2 h 01 min, 2 h 01 min, 2 h 01 min",
        "ROUGH_HOURS, 4.44e6, 1200 h, 1200 h, 1200 h",
        "PERCENT, 0.0003, 0.03 %, 0.03 %, 0.03 %",
        "DYNAMIC, 5.9, 5900 mPa s, 5900 cP, 5900 mPa s",
        "LENGTH, 0.0002, 0.20 mm, 0.008 in, 0.20 mm",
    })
    void threeFamilies(Look look, double value, String metric, String us, String si) {
        Amount amount = new Amount(look, value);
        assertEquals(metric, amount.text());
        assertEquals(us, amount.text(UnitSystem.US));
        assertEquals(si, amount.text(UnitSystem.SI));
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void noLookMixesFamilies(Look look) {
        for (double value : new double[] {1e-7, 3e-4, 0.5, 20, 300, 2e5, 3e7}) {
            String us = look.text(value, 0, UnitSystem.US);
            assertFalse(NOT_US.matcher(us).find(), us);
            String si = look.text(value, 0, UnitSystem.SI);
            assertFalse(US.matcher(si).find() || si.contains("°C"), si);
        }
    }

    @Test
    void aRangeNamesItsUnitOnce() {
        Shown range = new Shown.Range(new Amount(Look.FINE_DIRT, 0.1), new Amount(Look.FINE_DIRT, 0.9));
        assertEquals("10 to 90 mg/cm²", range.text());
        assertEquals("9.3 to 83.6 g/ft²", range.text(UnitSystem.US));
        assertThrows(
                IllegalArgumentException.class, () -> new Shown.Range(Amount.pressure(1), Amount.temperature(300)));
    }

    @Test
    void severalAreReadOneAfterTheOther() {
        Shown both = Shown.several("; ", List.of(Shown.word("Moss"), Amount.pressure(70e3)));
        assertEquals("Moss; 10.2 psi", both.text(UnitSystem.US));
        assertTrue(Shown.rows(List.of(0, 2)).text().equals("1, 3"));
    }

    @Test
    void writtenAmountsFollowTheUnits() {
        assertEquals("0.2 mm", Look.written("0.2", "mm", UnitSystem.METRIC));
        assertEquals("0.008 in", Look.written("0.2", "mm", UnitSystem.US));
        assertEquals("212 °F", Look.written("100", "°C", UnitSystem.US));
        assertEquals("5 °F", Look.written("3", "K", UnitSystem.US).replace(".4", ""));
    }
}
