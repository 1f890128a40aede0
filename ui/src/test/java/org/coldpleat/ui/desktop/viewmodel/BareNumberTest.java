package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BareNumberTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            80               | 80 mm
            -20              | -20 mm
            36.8 ± 0.2       | 36.8 ± 0.2 mm
            36,8             | 36,8 mm
            1.2e-3           | 1.2e-3 mm
            12 to 15         | 12 to 15 mm
            12-15            | 12-15 mm
            [0.68, 0.71]     | [0.68, 0.71] mm
            80 mm            | 80 mm
            1.45in           | 1.45in
            2-3/8"           | 2-3/8"
            2-3/8            | 2-3/8 mm
            typical          | typical
            about fifty      | about fifty
            1e               | 1e
            """)
    void aBareNumberGetsTheUnitBesideTheField(String typed, String written) {
        assertEquals(written, BareNumber.completed(typed, "mm"));
    }

    @Test
    void whereNoUnitStandsNothingIsAdded() {
        assertEquals("55", BareNumber.completed("55", ""));
        assertEquals("", BareNumber.completed("", "mm"));
    }

    @Test
    void aVeryLongTextIsNoTrouble() {
        String digits = "7".repeat(200_000);
        assertEquals(digits + " mm", BareNumber.completed(digits, "mm"));
        assertEquals(digits + "x", BareNumber.completed(digits + "x", "mm"));
    }
}
