package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.loading.ParticleSizes;
import org.coldpleat.model.loading.TestDust;
import org.junit.jupiter.api.Test;

/**
 * The medium test dust as the simulator injects it, against the measured batch (Mauthe, Hagmeyer, Zeiler 2022, see the
 * head of the table in the model).
 */
class DustSizesTest {
    private static final ParticleSizes MEDIUM = TestDust.A3.sizes();

    @Test
    void medianAndSharesOfTheMediumDust() {
        // 2 points: one batch, instrument not stated
        assertEquals(14e-6, MEDIUM.quantile(0.5), 0.5e-6);
        assertEquals(0.424, MEDIUM.finerThan(11e-6), 0.02);
        assertEquals(0.828, MEDIUM.finerThan(44e-6), 0.02);
    }

    @Test
    void sizesAreInMeters() {
        assertEquals(0.486e-6, MEDIUM.finest(), 1e-12);
        assertEquals(248.9e-6, MEDIUM.coarsest(), 1e-12);
    }
}
