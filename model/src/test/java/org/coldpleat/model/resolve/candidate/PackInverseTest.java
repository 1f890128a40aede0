package org.coldpleat.model.resolve.candidate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.junit.jupiter.api.Test;

class PackInverseTest {
    private static PackCurve round(int count) {
        return new PleatPack(PleatGeometry.radial(35e-3, 20e-3, count, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED), count, 0.06)
                .curve();
    }

    @Test
    void findsTheMediumWhereverItIsLookedForFirst() {
        SplittableRandom random = new SplittableRandom(31);
        for (int n = 0; n < 500; n++) {
            PackCurve pack = round(30 + random.nextInt(45));
            double medium = 1e7 * Math.exp(3 * random.nextDouble());
            double read = pack.at(medium).resistance();
            double start = medium * Math.exp(6 * random.nextDouble() - 3);
            PackInverse.Medium found = PackInverse.of(pack, read, start);
            if (found.resolved()) {
                assertEquals(medium, found.mediumResistance(), 1e-10 * medium);
                assertEquals(pack.at(medium).slope(), found.slope(), 2e-6);
            } else {
                // channels alone explain the reading: an upper end is told
                assertTrue(found.mediumResistance() >= medium);
            }
        }
    }

    @Test
    void readingBelowWhatTheChannelsResistSaysNothingOfTheMedium() {
        PackCurve crowded = round(95);
        double medium = 2e4;
        PackInverse.Medium found = PackInverse.of(crowded, crowded.at(medium).resistance(), 1e7);
        assertFalse(found.resolved());
        assertTrue(found.mediumResistance() > medium);
    }

    @Test
    void flatSheetIsReadAtOnce() {
        PackInverse.Medium found = PackInverse.of(new FlatPack(0.1).curve(), 3e8, 1e7);
        assertEquals(3e7, found.mediumResistance(), 1e-6);
        assertEquals(1, found.slope(), 0);
    }
}
