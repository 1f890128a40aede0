package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {
    // JCGM 100:2008 (GUM), table G.2, columns p = 95 % and 99 %; two decimals are printed.
    @ParameterizedTest
    @CsvSource({
        "1, 12.71, 63.66", "2, 4.30, 9.92", "3, 3.18, 5.84", "4, 2.78, 4.60", "5, 2.57, 4.03", "6, 2.45, 3.71",
        "7, 2.36, 3.50", "8, 2.31, 3.36", "9, 2.26, 3.25", "10, 2.23, 3.17", "15, 2.13, 2.95", "20, 2.09, 2.85",
        "30, 2.04, 2.75", "50, 2.01, 2.68"
    })
    void agreesWithTheGumTable(int degreesOfFreedom, double t95, double t99) {
        // Half of the last printed digit, and a little for values printed as truncated halves.
        assertEquals(t95, StudentT.twoSided(0.95, degreesOfFreedom), 0.0051);
        assertEquals(t99, StudentT.twoSided(0.99, degreesOfFreedom), 0.0051);
    }

    @Test
    void tendsToTheNormalQuantile() {
        // JCGM 100:2008, table G.2, last row: 1.960 for infinitely many degrees of freedom.
        assertEquals(1.960, StudentT.twoSided(0.95, 100_000), 0.0005);
    }

    @Test
    void closedFormForOneDegreeOfFreedom() {
        // The Cauchy distribution: t = tan(pi/2 * share).
        assertEquals(Math.tan(Math.PI / 2 * 0.95), StudentT.twoSided(0.95, 1), 1e-11);
    }

    @Test
    void refusesSharesOutsideZeroToOne() {
        assertThrows(IllegalArgumentException.class, () -> StudentT.twoSided(1, 3));
        assertThrows(IllegalArgumentException.class, () -> StudentT.twoSided(0, 3));
        assertThrows(IllegalArgumentException.class, () -> StudentT.twoSided(0.95, 0));
    }
}
