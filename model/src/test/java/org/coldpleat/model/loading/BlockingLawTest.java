package org.coldpleat.model.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BlockingLawTest {
    private static final double[] EXPONENTS = {0, 0.3, 0.999999, 1, 1.000001, 1.5, 2, 2.000001, 2.5, 3};

    @Test
    void massAndRatioAreInverseForAnyExponent() {
        for (double n : EXPONENTS) {
            BlockingLaw law = new BlockingLaw(n, 7);
            for (double ratio : new double[] {1, 1 + 1e-9, 1.3, 4, 30}) {
                // 1e-12: the steepest inverse here loses three digits of the sixteen
                assertEquals(ratio, law.resistanceRatio(law.massPerArea(ratio)), 1e-12 * Math.pow(ratio, 2), "n " + n);
            }
        }
    }

    @Test
    void slopeIsTheDerivativeOfTheRatio() {
        for (double n : EXPONENTS) {
            BlockingLaw law = new BlockingLaw(n, 7);
            double m = 0.05;
            double h = 1e-6;
            double difference = (law.resistanceRatio(m + h) - law.resistanceRatio(m - h)) / (2 * h);
            // central difference of step 1e-6: truncation below 1e-9, rounding 1e-10 of a slope near 10
            assertEquals(law.slope(m), difference, 1e-7 * difference, "n " + n);
        }
    }

    @Test
    void ratioIsContinuousThroughTheLimitExponents() {
        for (double limit : new double[] {1, 2}) {
            double at = new BlockingLaw(limit, 3).timeAtConstantPressure(0.2, 1, 1);
            double near = new BlockingLaw(limit + 1e-9, 3).timeAtConstantPressure(0.2, 1, 1);
            // the exponent moved by 1e-9 moves the value by about as much
            assertEquals(at, near, 1e-8);
        }
    }

    @Test
    void volumeAndTimeAtConstantPressureAreInverse() {
        for (double n : EXPONENTS) {
            BlockingLaw law = new BlockingLaw(n, 4);
            double time = law.timeAtConstantPressure(0.06, 0.002, 1.5);
            assertEquals(0.06, law.volumeAtConstantPressure(time, 0.002, 1.5), 1e-13, "n " + n);
        }
    }

    @Test
    void cleanLiquidNeverBlocks() {
        BlockingLaw law = new BlockingLaw(1, 4);
        assertEquals(5, law.volumeAtConstantPressure(10, 0.5, 0), 0);
        assertEquals(10, law.timeAtConstantPressure(5, 0.5, 0), 0);
    }

    @Test
    void mediumPlugsAtTheLimitMassAndStaysPlugged() {
        BlockingLaw law = new BlockingLaw(2, 5);
        assertEquals(0.2, law.limitMass(), 1e-15);
        assertEquals(Double.POSITIVE_INFINITY, law.resistanceRatio(0.2));
        assertEquals(Double.POSITIVE_INFINITY, law.resistanceRatio(0.3));
        assertEquals(Double.POSITIVE_INFINITY, law.timeAtConstantPressure(0.3, 1, 1));
        assertEquals(0.2, law.volumeAtConstantPressure(1e9, 1, 1), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, new BlockingLaw(1, 5).limitMass());
    }

    @Test
    void steeperThanCompleteBlockingPlugsInFiniteTime() {
        BlockingLaw law = new BlockingLaw(3, 5);
        // E(2 - n, infinity) = 1/(n - 2) = 1, over K c J0 = 5
        assertEquals(0.2, law.timeAtConstantPressure(0.1, 1, 1), 1e-12);
        assertEquals(0.1, law.volumeAtConstantPressure(0.5, 1, 1), 1e-12);
    }

    @Test
    void multiPassResultComesBackAsCapacity() {
        for (double n : EXPONENTS) {
            BlockingLaw law = BlockingLaw.fromMultiPass(n, 0.012, 0.11, 8e3, 100e3);
            assertEquals(0.012, law.capacity(0.11, 8e3, 100e3), 1e-14, "n " + n);
        }
    }

    @Test
    void typicalCapacityIsALogNormalBandThatEndsAtTheRange() {
        assertEquals(0.15, TypicalCapacity.CELLULOSE.capacity().high(), 1e-12);
        assertEquals(0.05, TypicalCapacity.CELLULOSE.capacity().low(), 1e-12);
        assertTrue(TypicalCapacity.CELLULOSE.capacity().provenance().isAssumption());
        BlockingLaw law = TypicalCapacity.GLASS.law(1, 10);
        assertEquals(10, law.resistanceRatio(TypicalCapacity.GLASS.capacity().value()), 1e-12);
    }

    @Test
    void wrongValuesAreNamedWithLimitAndUnit() {
        String message = assertThrows(IllegalArgumentException.class, () -> new BlockingLaw(1, -2))
                .getMessage();
        assertTrue(message.contains("coefficient") && message.contains("m2/kg") && message.contains("-2"), message);
        assertThrows(IllegalArgumentException.class, () -> new BlockingLaw(1, 2).resistanceRatio(-1));
        assertThrows(IllegalArgumentException.class, () -> BlockingLaw.fromMultiPass(1, 0.01, 0.1, 2, 1));
    }
}
