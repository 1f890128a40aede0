package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {
    @Test
    void whatIsAllowedComesBackUnchanged() {
        assertEquals(Double.MIN_VALUE, Require.positive("drop", Double.MIN_VALUE, "Pa"));
        assertEquals(0, Require.notNegative("drop", 0, "Pa"));
        assertEquals(3.5, Require.notNegative("drop", 3.5, "Pa"));
        assertEquals(2.5, Require.within("share", 2.5, 2, 3, "1"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.POSITIVE_INFINITY, Double.NaN})
    void positiveMeansFiniteAndAboveZero(double value) {
        assertThrows(IllegalArgumentException.class, () -> Require.positive("drop", value, "Pa"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MIN_VALUE, Double.POSITIVE_INFINITY, Double.NaN})
    void notNegativeMeansFiniteAndAtLeastZero(double value) {
        assertThrows(IllegalArgumentException.class, () -> Require.notNegative("drop", value, "Pa"));
    }

    @Test
    void bothLimitsBelongToTheRange() {
        assertEquals(2, Require.within("share", 2, 2, 3, "1"));
        assertEquals(3, Require.within("share", 3, 2, 3, "1"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.999, 3.001, Double.NaN})
    void whatLiesOutsideTheRangeIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> Require.within("share", value, 2, 3, "1"));
    }

    @Test
    void limitItselfIsAtLeastButNotAboveIt() {
        assertEquals(2, Require.atLeast("ratio", 2, 2, "1"));
        assertEquals(2.001, Require.above("ratio", 2.001, 2, "1"));
        assertThrows(IllegalArgumentException.class, () -> Require.above("ratio", 2, 2, "1"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.999, Double.POSITIVE_INFINITY, Double.NaN})
    void neitherIsBelowTheLimitOrInfinite(double value) {
        assertThrows(IllegalArgumentException.class, () -> Require.above("ratio", value, 2, "1"));
        assertThrows(IllegalArgumentException.class, () -> Require.atLeast("ratio", value, 2, "1"));
    }

    @Test
    void entriesAreCountedExactly() {
        assertEquals(3, Require.entries("shares", 3, 3));
        assertThrows(IllegalArgumentException.class, () -> Require.entries("shares", 2, 3));
        assertThrows(IllegalArgumentException.class, () -> Require.entries("shares", 4, 3));
    }

    @Test
    void refusalNamesQuantityLimitUnitAndValue() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> Require.within("faceVelocity", 9, 2, 3, "m/s"))
                .getMessage();
        for (String part : new String[] {"faceVelocity", "2.0", "3.0", "m/s", "9.0"}) {
            assertTrue(message.contains(part), message);
        }
    }
}
