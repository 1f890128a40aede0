package org.coldpleat.model.loading;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ElementLoadTest {
    private static final BlockingLaw LAW = new BlockingLaw(1, 20);

    @Test
    void dirtFollowsTheLocalFlow() {
        ElementLoad load = clean(4, 2).deposit(new double[] {0.4, 0.1, 0.1, 0.4}, new double[] {0.001, 0.003});
        assertArrayEquals(new double[] {0.001, 0.003}, load.massByClass(), 1e-17);
        double[] ratios = load.resistanceRatios(LAW);
        assertTrue(ratios[0] > ratios[1]);
        // 0.4 of 4 g on 0.025 m2
        assertEquals(Math.exp(20 * 0.064), ratios[0], 1e-12);
    }

    @Test
    void evenDepositIsTheLawItself() {
        ElementLoad load = clean(5, 1).deposit(new double[] {0.004});
        assertEquals(LAW.resistanceRatio(0.04), load.mediumRatio(LAW), 1e-13);
    }

    @Test
    void unevenDirtResistsLessThanEvenDirt() {
        ElementLoad even = clean(4, 1).deposit(new double[] {0.004});
        ElementLoad uneven = clean(4, 1).deposit(new double[] {0.7, 0.1, 0.1, 0.1}, new double[] {0.004});
        assertTrue(uneven.mediumRatio(LAW) < even.mediumRatio(LAW));
    }

    @Test
    void flowEvensOutAnUnevenLoad() {
        ElementLoad load = clean(2, 1).deposit(new double[] {0.8, 0.2}, new double[] {0.002});
        double difference = spread(load);
        for (int i = 0; i < 200; i++) {
            double[] ratios = load.resistanceRatios(LAW);
            double first = 1 / ratios[0] / (1 / ratios[0] + 1 / ratios[1]);
            load = load.deposit(new double[] {first, 1 - first}, new double[] {0.0002});
            assertTrue(spread(load) < difference);
            difference = spread(load);
        }
    }

    @Test
    void resistanceNeverFalls() {
        for (double n = 0; n <= 2.5; n += 0.25) {
            BlockingLaw law = new BlockingLaw(n, 20);
            ElementLoad load = clean(3, 1);
            double before = 1;
            for (int i = 0; i < 100; i++) {
                load = load.deposit(new double[] {0.5, 0.3, 0.2}, new double[] {0.0001});
                assertTrue(load.mediumRatio(law) >= before);
                before = load.mediumRatio(law);
            }
        }
    }

    @Test
    void nearlyPluggedElementCarriesACaution() {
        BlockingLaw complete = new BlockingLaw(2, 20);
        ElementLoad load = clean(1, 1).deposit(new double[] {0.0046});
        assertEquals(
                "loading.elementBlocked",
                load.notices(complete, "Blue can").get(0).code());
        assertTrue(load.notices(LAW, "Blue can").isEmpty());
    }

    @Test
    void flowSharesMustNotSumToMoreThanOne() {
        ElementLoad load = clean(2, 1);
        assertThrows(IllegalArgumentException.class, () -> load.deposit(new double[] {0.5, 0.6}, new double[] {0.001}));
    }

    @Test
    void cellsOfAnySizeKeepTheBooksAndFoldsTakeTheRest() {
        ElementLoad load = ElementLoad.clean(new double[] {0.01, 0.03, 0.02}, 1)
                .deposit(new double[] {0.2, 0.4, 0.3}, new double[] {0.001});
        assertEquals(0.001, load.mass(), 1e-18);
        assertEquals(0.0001, load.foldMass()[0], 1e-18);
        assertEquals(0.02, load.massPerArea()[0][0], 1e-16);
        double[] even = load.flowShares(new double[] {1, 1, 1}, 0.06);
        assertArrayEquals(new double[] {1 / 6.0, 0.5, 1 / 3.0}, even, 1e-15);
    }

    private static ElementLoad clean(int cells, int classes) {
        double[] areas = new double[cells];
        Arrays.fill(areas, 0.1 / cells);
        return ElementLoad.clean(areas, classes);
    }

    private static double spread(ElementLoad load) {
        double[][] mass = load.massPerArea();
        return mass[0][0] - mass[1][0];
    }
}
