package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.junit.jupiter.api.Test;

class ColdClassTest {
    private static final double K = 273.15;
    private static final ColdHint SYNTHETIC = new ColdHint(Optional.of(OilBase.SYNTHETIC), false);
    private static final ColdHint MULTIGRADE = new ColdHint(Optional.empty(), true);

    private static LinePair warm(double kv40, double kv100) {
        return new LinePair(40 + K, kv40 * 1e-6, 100 + K, kv100 * 1e-6);
    }

    private static List<ColdClass> classes(LinePair pair, ColdHint hint) {
        return ClassedLine.of(pair, hint).members().stream()
                .map(ClassCurve::coldClass)
                .toList();
    }

    @Test
    void theIndexTellsTheClass() {
        assertEquals(List.of(ColdClass.MINERAL), classes(warm(93, 10.8), ColdHint.NONE));
        assertEquals(List.of(ColdClass.POLYMER), classes(warm(61.7, 10.6), ColdHint.NONE));
        assertEquals(List.of(ColdClass.HIGH_INDEX), classes(warm(13.5, 5.1), ColdHint.NONE));
        // too thin at 100 degrees C for an index
        assertEquals(List.of(ColdClass.UNKNOWN), classes(warm(4, 1.5), ColdHint.NONE));
    }

    @Test
    void nearALimitBothClassesCountUnlessTheGradeDecides() {
        LinePair near = warm(170, 18.2);
        assertEquals(List.of(ColdClass.MINERAL, ColdClass.POLYMER), classes(near, ColdHint.NONE));
        assertEquals(List.of(ColdClass.POLYMER), classes(near, MULTIGRADE));
        ClassedLine both = ClassedLine.of(near, ColdHint.NONE);
        double polymer = ClassedLine.of(near, MULTIGRADE).curve().kinematicViscosity(-15 + K);
        double above = Math.log(polymer / both.curve().kinematicViscosity(-15 + K));
        assertTrue(both.thicker(-15 + K) > above + 0.3);
        assertEquals(0.03 + 0.15 * 2.37, both.thinner(-15 + K), 0.01);
    }

    @Test
    void aStatedBaseCountsOnlyWithoutImprover() {
        assertEquals(List.of(ColdClass.SYNTHETIC), classes(warm(31, 5.9), SYNTHETIC));
        assertEquals(
                List.of(ColdClass.POLYMER),
                classes(warm(61.7, 10.6), new ColdHint(Optional.of(OilBase.SYNTHETIC), true)));
        ColdHint mineral = new ColdHint(Optional.of(OilBase.MINERAL), false);
        assertEquals(List.of(ColdClass.MINERAL), classes(warm(46, 7.4), mineral));
    }

    @Test
    void heavyMineralOilsLieBelowTheirLineAndThinOnesAbove() {
        assertEquals(-0.073, ColdClass.MINERAL.bias(40e-6), 1e-12);
        assertEquals(-0.073 + 0.230 * Math.log(248.5 / 40), ColdClass.MINERAL.bias(248.5e-6), 1e-12);
        assertEquals(ColdClass.MINERAL.bias(30e-6), ColdClass.MINERAL.bias(3e-6));
        assertEquals(ColdClass.MINERAL.bias(260e-6), ColdClass.MINERAL.bias(900e-6));
    }

    @Test
    void oilsOfVeryHighIndexReachFartherUpThanDown() {
        ClassedLine line = ClassedLine.of(warm(13.5, 5.1), ColdHint.NONE);
        assertEquals(Math.log(1.03) + 0.25, line.thicker(K), 1e-9);
        assertEquals(Math.log(1.03) + 0.05, line.thinner(K), 1e-9);
    }

    @Test
    void theBiasFoundFromColdPointsAgreesWithItself() {
        ClassCurve mineral = ClassCurve.of(new LinePair(K, 4242e-6, 20 + K, 943e-6), ColdClass.MINERAL)
                .orElseThrow();
        double viscosity40 = mineral.curve().kinematicViscosity(40 + K);
        assertEquals(ColdClass.MINERAL.bias(viscosity40), mineral.curve().beta(), 1e-9);
        assertTrue(
                viscosity40 < WaltherCurve.through(K, 4242e-6, 20 + K, 943e-6).kinematicViscosity(40 + K) / 1.1);
    }

    @Test
    void twoColdPointsWidenUpwardAndStayNarrowBetween() {
        ClassCurve mineral = ClassCurve.of(new LinePair(K, 481.8e-6, 20 + K, 113.9e-6), ColdClass.MINERAL)
                .orElseThrow();
        assertEquals(Math.log(1.04), mineral.halfWidth(10 + K, 1), 5e-3);
        // 0.06, 0.10, 0.13, 0.14 at 40, 60, 80, 100 degrees C, worked out by hand with half-widths of 3 %
        double[] expected = {0.06, 0.10, 0.13, 0.14};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], mineral.halfWidth(40 + 20 * i + K, 1), 0.01);
            assertEquals(expected[i], mineral.halfWidth(40 + 20 * i + K, -1), 0.01);
        }
    }

    @Test
    void halfWidthsHaveNoStepAtThePoints() {
        for (LinePair pair : List.of(
                new LinePair(K, 4242e-6, 20 + K, 943e-6),
                new LinePair(K, 525e-6, 100 + K, 10.6e-6),
                new LinePair(60 + K, 30e-6, 100 + K, 10.6e-6))) {
            ClassedLine line = ClassedLine.of(pair, ColdHint.NONE);
            for (double at : new double[] {pair.low(), pair.high()}) {
                assertEquals(line.thicker(at - 1e-6), line.thicker(at + 1e-6), 1e-6);
                assertEquals(line.thinner(at - 1e-6), line.thinner(at + 1e-6), 1e-6);
            }
        }
    }

    @Test
    void aColdPairOfWhichNoClassFitsStillMakesALine() {
        // hardly falling: no mineral line is left once its bias is taken off
        LinePair flat = new LinePair(-40 + K, 1.003e-3, -39 + K, 1.000e-3);
        assertTrue(!ClassedLine.of(flat, ColdHint.NONE).members().isEmpty());
    }
}
