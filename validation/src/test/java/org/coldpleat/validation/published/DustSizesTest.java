package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.loading.ParticleSizes;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * The medium test dust as the simulator injects it, against the measured batch (Mauthe, Hagmeyer, Zeiler 2022, see the
 * head of the table in the model).
 */
class DustSizesTest {
    private static final String SOURCE = "Mauthe, Hagmeyer, Zeiler 2022, measured batch";

    private static final ParticleSizes MEDIUM = TestDust.A3.sizes();

    @Test
    void medianAndSharesOfTheMediumDust() {
        // 2 points: one batch, instrument not stated
        check("median size of medium test dust")
                .expected(14e-6, "m")
                .computed(MEDIUM.quantile(0.5))
                .within(0.5e-6, "one batch, instrument not stated");
        check("medium test dust finer than 11 µm")
                .expected(0.424, "1")
                .computed(MEDIUM.finerThan(11e-6))
                .within(0.02, "2 points: one batch, instrument not stated");
        check("medium test dust finer than 44 µm")
                .expected(0.828, "1")
                .computed(MEDIUM.finerThan(44e-6))
                .within(0.02, "2 points: one batch, instrument not stated");
    }

    @Test
    void sizesAreInMeters() {
        assertEquals(0.486e-6, MEDIUM.finest(), 1e-12);
        assertEquals(248.9e-6, MEDIUM.coarsest(), 1e-12);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
