package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.coldpleat.model.loading.FiltrationRatio;
import org.coldpleat.model.loading.Iso4406;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Scale numbers of ISO 4406 and the efficiencies that go with filtration ratios. */
class CleanlinessCodeTest {
    private static final String SOURCE =
            "definition (ISO 16889, ISO 4548-12), table as common in filter handbooks, from memory";

    /**
     * Limits of ISO 4406:1999, table 1, that were printed in a hydraulic filter catalog (appendix on contamination
     * classification, example "14/12/7") and in Construction Equipment magazine, "ISO 4406 basics" (code 17: 640 to 1300
     * per milliliter).
     */
    @Test
    void limitsBelongToTheLowerScale() {
        double[][] printed = {
            {1, 0.01, 0.02}, {6, 0.32, 0.64}, {7, 0.64, 1.3}, {8, 1.3, 2.5}, {9, 2.5, 5}, {10, 5, 10},
            {12, 20, 40}, {14, 80, 160}, {16, 320, 640}, {17, 640, 1300}, {18, 1300, 2500}, {19, 2500, 5000},
            {20, 5000, 10_000}, {24, 80_000, 160_000}, {27, 640_000, 1_300_000}, {28, 1_300_000, 2_500_000}
        };
        for (double[] row : printed) {
            int scale = (int) row[0];
            String source = "ISO 4406:1999, table 1, as printed in a hydraulic filter catalog and a trade magazine";
            ExternalCheck limit = ExternalCheck.of(Topic.LOADING, "scale number of a count per milliliter", source);
            limit.at("up to and including " + row[2]).exactly(scale, Iso4406.scale(row[2]));
            limit.at("more than " + row[1]).exactly(scale, Iso4406.scale(Math.nextUp(row[1])));
            limit.at("not more than " + row[1]).exactly(scale - 1, Iso4406.scale(row[1]));
        }
    }

    @Test
    void countsBeyondTheTableHaveTheirOwnMark() {
        assertEquals(Iso4406.ABOVE_TABLE, Iso4406.scale(2_500_001));
        assertEquals(0, Iso4406.scale(0));
        assertEquals(">28/18/13", Iso4406.ofCounts(3e6, 2000, 60).written());
        ExternalCheck.of(
                        Topic.LOADING,
                        "cleanliness code of 100, 30 and 0.9 particles",
                        "example of a hydraulic filter catalog")
                .exactly("14/12/7", Iso4406.ofCounts(100, 30, 0.9).written());
        assertThrows(IllegalArgumentException.class, () -> new Iso4406(12, 14, 7));
    }

    @Test
    void doublingTheDirtRaisesTheScaleByOne() {
        // the limits are doublings rounded by up to 4 %: counts 10 % inside a scale move by exactly one
        for (int scale = 1; scale <= 27; scale++) {
            double count = 0.01 * Math.pow(2, scale) / 1.3;
            assertEquals(Iso4406.scale(count) + 1, Iso4406.scale(2 * count), "count " + count);
        }
    }

    /** Definition of the filtration ratio (ISO 16889, ISO 4548-12), table as common in filter handbooks, from memory. */
    @Test
    void efficienciesOfFiltrationRatios() {
        double[][] percent = {{2, 50}, {5, 80}, {10, 90}, {20, 95}, {75, 98.667}, {100, 99}, {200, 99.5}, {1000, 99.9}};
        for (double[] row : percent) {
            // half of the last printed digit
            check("efficiency of a filtration ratio")
                    .at("beta " + row[0])
                    .expected(row[1], "%")
                    .computed(100 * FiltrationRatio.efficiency(row[0]))
                    .within(5e-4, "half of the last printed digit");
            ExternalCheck.of(Topic.LOADING, "filtration ratio back from the efficiency", "derived here")
                    .at("beta " + row[0])
                    .expected(row[0], "1")
                    .computed(FiltrationRatio.beta(FiltrationRatio.efficiency(row[0])))
                    .withinRelative(1e-10, "arithmetic");
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
