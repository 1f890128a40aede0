package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PleatPackTest {
    private static final double PAPER = 2.747e7;

    private static PleatGeometry radial(double count) {
        return PleatGeometry.radial(35e-3, 20e-3, count, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED);
    }

    @Test
    void radialGapsFillThePitchEverywhere() {
        PleatGeometry pleat = radial(55);
        for (double share : new double[] {0, 0.3, 0.7, 1}) {
            double pitch = pleat.inletPitch() + (pleat.outletPitch() - pleat.inletPitch()) * share;
            double tau = 0.8e-3 / pleat.legCosine();
            assertEquals(pitch, pleat.upstreamGap(share) + pleat.downstreamGap(share) + 2 * tau, 1e-15);
        }
        assertEquals(0.772865e-3, pleat.downstreamGap(1), 1e-9);
    }

    @Test
    void resistanceScalesInverselyWithCountAndHeight() {
        double one = new PleatPack(radial(55), 1, 1).resistance(PAPER);
        double many = new PleatPack(radial(55), 55, 0.06).resistance(PAPER);
        assertEquals(one / (55 * 0.06), many, 1e-12 * many);
    }

    @Test
    void statedAreaKeepsTheChannelFactor() {
        PleatPack pack = new PleatPack(radial(55), 55, 0.06);
        PackResult own = pack.solve(PAPER);
        PackResult stated = pack.withStatedArea(2 * own.effectiveArea()).solve(PAPER);
        assertEquals(own.channelFactor(), stated.channelFactor(), 1e-12);
        assertEquals(own.resistance() / 2, stated.resistance(), 1e-12 * own.resistance());
        assertEquals(
                PAPER / stated.effectiveArea() * stated.channelFactor(), stated.resistance(), 1e-12 * own.resistance());
    }

    @Test
    void effectiveAreaOfParallelLegsCountsTheFolds() {
        PleatGeometry pleat = PleatGeometry.rectangular(15e-3, 0.8e-3, 1e-3, 0.5e-3, PleatEnds.FOLDED);
        double expected = 2 * 15e-3 + 1e-3 + 0.5e-3 - 1.84 * 0.8e-3;
        assertEquals(expected, new PleatPack(pleat, 1, 1).solve(PAPER).effectiveArea(), 1e-15);
    }

    @Test
    void uniformCellsEqualOneResistance() {
        PleatPack pack = new PleatPack(radial(65), 65, 0.06);
        double[] cells = new double[PleatPack.DEFAULT_CELLS];
        Arrays.fill(cells, PAPER);
        assertEquals(pack.solve(PAPER).resistance(), pack.solve(cells).resistance(), 0);
        assertArrayEquals(
                pack.solve(PAPER).relativeFaceVelocities(), pack.solve(cells).relativeFaceVelocities(), 0);
    }

    @Test
    void cellsAndFoldsPassTheWholeFlow() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 0; n < 200; n++) {
            double[] cells = new double[40];
            for (int i = 0; i < cells.length; i++) {
                cells[i] = 1e7 * Math.exp(4 * random.nextDouble());
            }
            PackResult result = new PleatPack(radial(30 + random.nextInt(60)), 55, 0.06).solve(cells);
            assertEquals(1, passed(result, 2e-4) / 2e-4, 1e-9);
        }
    }

    private static double passed(PackResult result, double flow) {
        double sum = flow * result.foldShare();
        double[] velocity = result.faceVelocities(flow);
        double[] area = result.cellAreas();
        for (int i = 0; i < velocity.length; i++) {
            sum += velocity[i] * area[i];
        }
        return sum;
    }

    @Test
    void dirtOnAnyCellRaisesTheResistance() {
        PleatPack pack = new PleatPack(radial(65), 65, 0.06);
        double[] cells = new double[30];
        Arrays.fill(cells, PAPER);
        double clean = pack.solve(cells).resistance();
        for (int i = 0; i < cells.length; i++) {
            double[] dirty = cells.clone();
            dirty[i] *= 3;
            assertTrue(pack.solve(dirty).resistance() > clean, "cell " + i);
        }
    }

    @Test
    void stillFiniteAndRisingThroughTouchingLegs() {
        double previous = 0;
        // From loose to twice more medium than room; steps of the core radius so small that a jump would show
        double step = 0.002e-3;
        for (double core = 20e-3; core > 8e-3; core -= step) {
            PleatGeometry pleat = PleatGeometry.radial(core + 15e-3, core, 70, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED);
            double value = new PleatPack(pleat, 70, 0.06).resistance(PAPER);
            assertTrue(Double.isFinite(value), "core " + core);
            if (previous > 0) {
                assertTrue(value > previous, "rises as the core shrinks, core " + core);
                // 2 micrometers of radius move the gap by 0.18 micrometers; near contact the channel conductance
                // (slip length 5 micrometers) then changes by at most about 4 %, the resistance by less
                assertTrue(value < 1.04 * previous, "no jump, core " + core + " ratio " + value / previous);
            }
            previous = value;
        }
        assertTrue(previous > 3 * new PleatPack(radial(70), 70, 0.06).resistance(PAPER));
    }

    @Test
    void crowdedPackSaysSo() {
        PackResult result = new PleatPack(radial(90), 90, 0.06).solve(PAPER);
        assertTrue(result.whole().crowdedShare() > 0.1 && result.whole().crowdedShare() < 0.5);
        // P(r) = 2 t where r = t / tan(pi/N)
        assertEquals(
                (0.8e-3 / Math.tan(Math.PI / 90) - 20e-3) / 15e-3,
                result.whole().crowdedShare(),
                1e-9);
        assertTrue(result.whole().flags().contains(PackFlag.CROWDED)
                && result.whole().flags().contains(PackFlag.LEGS_TOUCH));
        assertFalse(result.whole().notices("here").isEmpty());
        assertEquals(0, new PleatPack(radial(60), 60, 0.06).solve(PAPER).whole().crowdedShare(), 0);
    }

    @Test
    void embossingKeepsACrowdedPackOpener() {
        PleatGeometry touching = radial(85);
        double contact = new PleatPack(touching, 85, 0.06).resistance(PAPER);
        PackResult embossed = new PleatPack(touching.withGapFloor(0.15e-3), 85, 0.06).solve(PAPER);
        assertTrue(embossed.resistance() < contact);
        assertTrue(embossed.whole().flags().contains(PackFlag.GAP_FLOOR_HOLDS));
        assertEquals(0, embossed.whole().touchingShare(), 0);
    }

    @Test
    void unknownChannelsCountAsMediumAlone() {
        PackResult result = new FlatPack(55 * 2 * 14e-3 * 60e-3).solve(PAPER);
        assertEquals(PAPER / 0.0924, result.resistance(), 1e-9 * result.resistance());
        assertEquals(1, result.channelFactor(), 0);
        assertTrue(result.whole().channelsUnknown());
        assertEquals(1e-4, passed(result, 1e-4), 1e-16);
    }

    @Test
    void wrongUseNamesValueLimitAndUnit() {
        PleatGeometry pleat = radial(55);
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, () -> new PleatPack(pleat, 55, 0.06).solve(-1));
        assertTrue(thrown.getMessage().contains("1/m"));
        assertThrows(IllegalArgumentException.class, () -> new PleatPack(pleat, 0, 0.06));
        assertThrows(IllegalArgumentException.class, () -> radial(2));
        assertThrows(
                IllegalArgumentException.class,
                () -> PleatGeometry.rectangular(1e-3, 0.8e-3, 1e-3, 1e-3, PleatEnds.FOLDED));
        assertThrows(
                IllegalArgumentException.class,
                () -> new PleatPack(pleat, 1, 1, PleatClosure.DEFAULT, OptionalDouble.of(-1)));
    }

    /** Gaps from 0.6 to -0.2 mm upstream and from -0.1 to 0.5 mm downstream over a leg of 10 mm. */
    private static PleatGeometry crossing(double floor) {
        return new PleatGeometry(10e-3, 0.8e-3, 0.6e-3, -0.2e-3, -0.1e-3, 0.5e-3, 2e-3, 2e-3, floor, PleatEnds.PLUGGED);
    }

    private static PackResult solve(PleatGeometry pleat, PleatClosure closure) {
        return new PleatPack(pleat, 1, 1).withClosure(closure).solve(PAPER);
    }

    @Test
    void smallestGapsAreThoseAtTheMiddlesOfTheLastOfAHundredStretches() {
        PleatGeometry pleat =
                new PleatGeometry(10e-3, 0.8e-3, 0.6e-3, 0.4e-3, 0.3e-3, 0.7e-3, 2.6e-3, 2.6e-3, 0, PleatEnds.PLUGGED);
        PackResult result = solve(pleat, PleatClosure.DEFAULT);
        // half of a hundredth before the end: 0.4 + 0.2/200 and 0.3 + 0.4/200 mm
        assertEquals(0.401e-3, result.whole().smallestUpstreamGap(), 1e-15);
        assertEquals(0.302e-3, result.whole().smallestDownstreamGap(), 1e-15);
        PackResult wider = solve(pleat, withGapFactor(1.1));
        assertEquals(0.4411e-3, wider.whole().smallestUpstreamGap(), 1e-15);
        assertEquals(0.3322e-3, wider.whole().smallestDownstreamGap(), 1e-15);
    }

    @Test
    void legsTouchOverTheStretchWhereTheyWouldCross() {
        PackResult result = solve(crossing(0), PleatClosure.DEFAULT);
        // downstream closed up to 1/6 of the leg (17 middles of 100), upstream from 3/4 on (25)
        assertEquals(0.42, result.whole().touchingShare(), 1e-12);
        assertTrue(result.whole().flags().contains(PackFlag.LEGS_TOUCH));
        assertFalse(result.whole().flags().contains(PackFlag.GAP_FLOOR_HOLDS));
    }

    @Test
    void embossedLegsDoNotTouch() {
        PackResult result = solve(crossing(0.05e-3), PleatClosure.DEFAULT);
        assertEquals(0, result.whole().touchingShare());
        assertTrue(result.whole().flags().contains(PackFlag.GAP_FLOOR_HOLDS));
        assertFalse(result.whole().flags().contains(PackFlag.LEGS_TOUCH));
    }

    @Test
    void looseLegsTouchNowhereAndHoldNoFloor() {
        PackResult result =
                solve(PleatGeometry.rectangular(10e-3, 0.8e-3, 0.5e-3, 0.5e-3, PleatEnds.FOLDED), PleatClosure.DEFAULT);
        assertTrue(result.whole().flags().isEmpty());
        assertTrue(result.whole().notices("here").isEmpty());
    }

    @Test
    void packIsNarrowWhenAMeanGapIsBelowAFifthOfAMillimeter() {
        assertFalse(isNarrow(0.21e-3, 0.5e-3, 1));
        assertFalse(isNarrow(0.5e-3, 0.21e-3, 1));
        assertTrue(isNarrow(0.19e-3, 0.5e-3, 1));
        assertTrue(isNarrow(0.5e-3, 0.19e-3, 1));
        assertTrue(isNarrow(0.21e-3, 0.5e-3, 0.9));
        // 0.1 to 0.32 mm is 0.21 mm on the mean
        PleatGeometry tapered =
                new PleatGeometry(10e-3, 0.8e-3, 0.32e-3, 0.1e-3, 0.3e-3, 0.52e-3, 3e-3, 3e-3, 0, PleatEnds.PLUGGED);
        assertFalse(solve(tapered, PleatClosure.DEFAULT).whole().flags().contains(PackFlag.NARROW_GAP));
    }

    private static boolean isNarrow(double upstream, double downstream, double factor) {
        PleatGeometry pleat = PleatGeometry.rectangular(10e-3, 0.8e-3, upstream, downstream, PleatEnds.FOLDED);
        return solve(pleat, withGapFactor(factor)).whole().flags().contains(PackFlag.NARROW_GAP);
    }

    @Test
    void narrowPackIsLessSure() {
        PleatGeometry pleat = PleatGeometry.rectangular(10e-3, 0.8e-3, 0.15e-3, 0.5e-3, PleatEnds.FOLDED);
        assertEquals(
                "pleat.narrowGap",
                solve(pleat, PleatClosure.DEFAULT)
                        .whole()
                        .notices("here")
                        .get(0)
                        .code());
    }

    @Test
    void noticesNameWhatTheFlagsSay() {
        PackResult touching = solve(crossing(0), PleatClosure.DEFAULT);
        assertEquals("pleat.legsTouch", touching.whole().notices("here").get(0).code());
        assertEquals(
                "42 %", touching.whole().notices("here").get(0).values().get(0).text());
        PackResult crowded = new PleatPack(radial(90), 90, 0.06).solve(PAPER);
        assertEquals("pleat.crowded", crowded.whole().notices("here").get(0).code());
        // (0.8 mm/tan(2 deg) - 20 mm)/15 mm = 19 %
        assertEquals(
                "19 %", crowded.whole().notices("here").get(0).values().get(0).text());
        PackResult embossed = solve(crossing(0.25e-3), PleatClosure.DEFAULT);
        assertEquals(
                "pleat.gapFloorHolds", embossed.whole().notices("here").get(0).code());
        assertEquals(
                "pleat.channelsUnknown",
                new FlatPack(0.1).solve(PAPER).whole().notices("here").get(0).code());
    }

    @Test
    void touchingLegsNeedFlowAlongTheSheet() {
        assertThrows(IllegalArgumentException.class, () -> solve(crossing(0), PleatClosure.PLAIN));
        assertTrue(solve(crossing(0.05e-3), PleatClosure.PLAIN).resistance() > 0);
    }

    @Test
    void dropIsViscosityTimesResistanceTimesFlow() {
        PackResult result = new FlatPack(0.1).solve(2e7);
        assertEquals(0.5 * 2e8 * 3e-4, result.whole().pressureDrop(0.5, 3e-4), 1e-9);
        assertEquals(3e-3, result.faceVelocities(3e-4)[0], 1e-15);
        assertEquals(PleatPack.DEFAULT_CELLS, result.cells());
    }

    @Test
    void dirtyStretchesOfASheetPassLess() {
        // half of 0.1 m2 three times as tight: conductance 0.05/1e7 + 0.05/3e7
        PackResult result = new FlatPack(0.1).solve(new double[] {1e7, 3e7});
        assertEquals(1e7 / (0.05 + 0.05 / 3), result.resistance(), 1e-6);
        assertEquals(1.5, result.relativeFaceVelocities()[0], 1e-12);
        assertEquals(0.5, result.relativeFaceVelocities()[1], 1e-12);
        assertArrayEquals(new double[] {0.05, 0.05}, result.cellAreas(), 1e-15);
    }

    @Test
    void mediumMustBeFiniteEverywhereAndOfTwoCellsAtLeast() {
        FlatPack pack = new FlatPack(0.1);
        assertThrows(IllegalArgumentException.class, () -> pack.solve(new double[] {1e7}));
        assertThrows(IllegalArgumentException.class, () -> pack.solve(new double[] {1e7, 0}));
        assertThrows(IllegalArgumentException.class, () -> pack.solve(new double[] {1e7, Double.POSITIVE_INFINITY}));
        assertEquals(2, pack.solve(new double[] {1e7, 1e7}).cells());
        assertThrows(IllegalArgumentException.class, () -> new FlatPack(0));
        assertThrows(IllegalArgumentException.class, () -> new FlatPack(Double.POSITIVE_INFINITY));
    }

    @Test
    void cellAreasAddUpToTheLegs() {
        PleatGeometry pleat = PleatGeometry.vee(14e-3, 0.6e-3, 1.2e-3, PleatEnds.PLUGGED);
        // two legs of hypot(14, 0.6) mm, 40 pleats of 60 mm
        double legs = 2 * Math.hypot(14e-3, 0.6e-3) * 40 * 0.06;
        assertEquals(
                legs,
                Arrays.stream(new PleatPack(pleat, 40, 0.06).solve(PAPER).cellAreas())
                        .sum(),
                1e-15);
        PackResult stated = new PleatPack(pleat, 40, 0.06).withStatedArea(0.05).solve(PAPER);
        assertEquals(0.05, Arrays.stream(stated.cellAreas()).sum(), 1e-15);
    }

    @Test
    void packMadeTallerGrowsItsStatedArea() {
        PleatPack pack = new PleatPack(radial(55), 55, 0.06);
        double one = pack.resistance(PAPER);
        assertEquals(one / 1.5, pack.taller(1.5).resistance(PAPER), 1e-12 * one);
        PleatPack stated = pack.withStatedArea(0.08);
        assertEquals(0.12, stated.taller(1.5).solve(PAPER).effectiveArea(), 1e-15);
        assertEquals(stated.resistance(PAPER) / 1.5, stated.taller(1.5).resistance(PAPER), 1e-12 * one);
    }

    @Test
    void deeperOrThickerPackIsThePackMadeSoAndTakesItsAreaAlong() {
        PleatPack pack = new PleatPack(radial(55), 55, 0.06);
        // legs of 15 mm less two folds of 0.8 mm, half as long again
        PleatGeometry deep = PleatGeometry.radial(41.7e-3, 20e-3, 55, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED);
        PleatGeometry thick = PleatGeometry.radial(35e-3, 20e-3, 55, 0.88e-3, 0, 0, 0, PleatEnds.FOLDED);
        double deeper = new PleatPack(deep, 55, 0.06).resistance(PAPER);
        double thicker = new PleatPack(thick, 55, 0.06).resistance(PAPER);
        assertEquals(deeper, pack.deeper(1.5).resistance(PAPER), 1e-10 * deeper);
        assertEquals(thicker, pack.thicker(1.1, 0.98).resistance(PAPER), 1e-10 * thicker);
        PleatPack stated = pack.withStatedArea(0.08);
        assertEquals(0.12, stated.deeper(1.5).solve(PAPER).effectiveArea(), 1e-15);
        assertEquals(0.0784, stated.thicker(1.1, 0.98).solve(PAPER).effectiveArea(), 1e-15);
    }

    @Test
    void packOfMorePleatsGrowsItsStatedArea() {
        PleatPack pack = new PleatPack(radial(55), 55, 0.06);
        double made = new PleatPack(radial(44), 44, 0.06).resistance(PAPER);
        assertEquals(made, pack.withPleatCount(44).resistance(PAPER), 1e-10 * made);
        assertEquals(
                0.08 * 44 / 55,
                pack.withStatedArea(0.08).withPleatCount(44).solve(PAPER).effectiveArea(),
                1e-14);
    }

    private static PleatClosure withGapFactor(double factor) {
        PleatClosure usual = PleatClosure.DEFAULT;
        return new PleatClosure(usual.slipCoefficient(), usual.inPlaneRatio(), usual.foldsOpen(), factor);
    }
}
