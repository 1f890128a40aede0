package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * Half the area at the same flow and the same terminal pressure drop lives less than half as long.
 *
 * <p>Derivation. Dirt to the end {@code M(A) = (A/K) E(1 - n, u)}, {@code u = ln(terminal/clean drop)}, {@code E(a, x) =
 * (exp(a x) - 1)/a}. At half the area the clean drop doubles: {@code M(A/2)/M(A) = E(1 - n, u - ln 2) / (2 E(1 - n,
 * u))}. E rises strictly with x for every a, so the quotient is below 1/2 for every exponent, cake (n = 0) included.
 * With r = terminal/clean it is (r/2 - 1)/(2 (r - 1)) for n = 0, (1 - ln 2/ln r)/2 for n = 1 and (1 - 2/r)/(2 (1 -
 * 1/r)) for n = 2. For r to infinity it tends to 1/4 for n = 0, to 2^(n - 2) for n below 1 and to 1/2 from n = 1 on.
 * Dirt comes at a rate that the area does not change, so the same holds for the time.
 */
class HalvedAreaTest {
    private static final String SOURCE = "derived here";

    @Test
    void lifeFallsByMoreThanHalfForEveryExponent() {
        for (double n = 0; n <= 3; n += 0.125) {
            for (double ratio : new double[] {2.01, 3, 8, 20, 200}) {
                double share = share(n, ratio);
                assertTrue(share > 0 && share < 0.5, "n " + n + ", terminal/clean " + ratio + ": " + share);
            }
        }
    }

    @Test
    void shareOfLifeLeftHasTheDerivedValue() {
        check("life left at half the area, n 0")
                .expected((8 / 2.0 - 1) / (2 * 7.0), "1")
                .computed(share(0, 8))
                .within(1e-14, "arithmetic");
        check("life left at half the area, n 1")
                .expected(1 / 3.0, "1")
                .computed(share(1, 8))
                .within(1e-14, "arithmetic");
        check("life left at half the area, n 2")
                .expected((1 - 2 / 8.0) / (2 * (1 - 1 / 8.0)), "1")
                .computed(share(2, 8))
                .within(1e-14, "arithmetic");
    }

    @Test
    void shareTendsToItsLimitAtHighTerminalDrops() {
        // leading corrections at r = 1e9: (n = 0) 1/r, (n = 1/2) 1/sqrt(r), (n = 2) 1/r
        check("life left at half the area, high terminal drop, n 0")
                .expected(0.25, "1")
                .computed(share(0, 1e9))
                .within(1e-8, "leading correction at a ratio of 1e9");
        check("life left at half the area, high terminal drop, n 0.5")
                .expected(Math.pow(2, -1.5), "1")
                .computed(share(0.5, 1e9))
                .within(1e-4, "leading correction at a ratio of 1e9");
        check("life left at half the area, high terminal drop, n 2")
                .expected(0.5, "1")
                .computed(share(2, 1e9))
                .within(1e-8, "leading correction at a ratio of 1e9");
    }

    @Test
    void toTheSameRatioOfItsOwnCleanDropItWouldBeExactlyHalf() {
        BlockingLaw law = new BlockingLaw(1.2, 9);
        check("life at half the area to the same ratio of its own clean drop")
                .expected(0.5, "1")
                .computed(law.capacity(0.05, 2e3, 16e3) / law.capacity(0.1, 1e3, 8e3))
                .within(1e-15, "arithmetic");
    }

    private static double share(double exponent, double ratio) {
        BlockingLaw law = new BlockingLaw(exponent, 9);
        return law.capacity(0.05, 2e3, 1e3 * ratio) / law.capacity(0.1, 1e3, 1e3 * ratio);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
