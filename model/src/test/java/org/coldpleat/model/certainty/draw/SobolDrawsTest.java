package org.coldpleat.model.certainty.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SobolDrawsTest {
    @Test
    void sameSeedGivesSameBitsInAnyOrder() {
        SobolDraws one = new SobolDraws(40, 7);
        SobolDraws two = new SobolDraws(40, 7);
        for (int i = 999; i >= 0; i -= 37) {
            assertArrayEquals(one.point(i), two.point(i));
        }
    }

    @Test
    void anotherSeedGivesOtherPoints() {
        assertNotEquals(new SobolDraws(2, 1).point(5)[0], new SobolDraws(2, 2).point(5)[0]);
    }

    @Test
    void coordinatesKeepOffZeroAndOne() {
        SobolDraws draws = new SobolDraws(11, 3);
        for (int i = 0; i < 4096; i++) {
            for (double u : draws.point(i)) {
                assertTrue(u > 0 && u < 1);
            }
        }
    }

    /** Each of 1024 equal cells of every coordinate holds exactly one of the first 1024 points, also when scrambled. */
    @Test
    void everyCoordinateIsStratified() {
        SobolDraws draws = new SobolDraws(60, 11);
        for (int j = 0; j < 60; j++) {
            boolean[] hit = new boolean[1024];
            for (int i = 0; i < 1024; i++) {
                hit[(int) (draws.point(i)[j] * 1024)] = true;
            }
            for (int cell = 0; cell < 1024; cell++) {
                assertTrue(hit[cell], "coordinate " + j + " cell " + cell);
            }
        }
    }

    /** The first two coordinates of a Sobol sequence form a (0, m, 2)-net: every elementary box holds one point. */
    @Test
    void firstTwoCoordinatesFormANetOfBestQuality() {
        SobolDraws draws = new SobolDraws(2, 5);
        for (int split = 0; split <= 8; split++) {
            int columns = 1 << split;
            int rows = 256 / columns;
            int[] hits = new int[256];
            for (int i = 0; i < 256; i++) {
                double[] p = draws.point(i);
                int column = (int) (p[0] * columns);
                int row = (int) (p[1] * rows);
                hits[column * rows + row]++;
            }
            for (int h : hits) {
                assertEquals(1, h, "split " + split);
            }
        }
    }

    @Test
    void refusesTooManyDimensions() {
        assertThrows(IllegalArgumentException.class, () -> new SobolDraws(SobolDraws.MAXIMUM_DIMENSION + 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new SobolDraws(1, 0).point(-1));
    }
}
