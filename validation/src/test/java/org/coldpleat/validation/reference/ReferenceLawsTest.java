package org.coldpleat.validation.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ReferenceLawsTest {
    @Test
    void permeabilityFallsWithSolidityWhereTheLawsHold() {
        for (double c = 0.06; c < 0.29; c += 0.01) {
            double d = c + 0.01;
            assertTrue(HappelParallelPermeability.normalizedPermeability(d)
                    < HappelParallelPermeability.normalizedPermeability(c));
            assertTrue(SpielmanGorenPermeability.normalizedPermeability(d)
                    < SpielmanGorenPermeability.normalizedPermeability(c));
            assertTrue(TomadakisRobertsonPermeability.normalizedPermeability(d)
                    < TomadakisRobertsonPermeability.normalizedPermeability(c));
        }
        assertThrows(IllegalArgumentException.class, () -> SpielmanGorenPermeability.normalizedPermeability(0.5));
    }

    @Test
    void barusFactorIsOneWithoutPressure() {
        assertEquals(1, new BarusPressure(20e-9).factor(0));
        assertEquals(1.0202, new BarusPressure(20e-9).factor(1e6), 1e-4);
    }
}
