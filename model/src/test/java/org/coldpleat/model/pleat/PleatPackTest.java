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
        assertTrue(result.crowdedShare() > 0.1 && result.crowdedShare() < 0.5);
        // P(r) = 2 t where r = t / tan(pi/N)
        assertEquals((0.8e-3 / Math.tan(Math.PI / 90) - 20e-3) / 15e-3, result.crowdedShare(), 1e-9);
        assertTrue(result.flags().contains(PackFlag.CROWDED) && result.flags().contains(PackFlag.LEGS_TOUCH));
        assertFalse(result.notices("here").isEmpty());
        assertEquals(0, new PleatPack(radial(60), 60, 0.06).solve(PAPER).crowdedShare(), 0);
    }

    @Test
    void embossingKeepsACrowdedPackOpener() {
        PleatGeometry touching = radial(85);
        double contact = new PleatPack(touching, 85, 0.06).resistance(PAPER);
        PackResult embossed = new PleatPack(touching.withGapFloor(0.15e-3), 85, 0.06).solve(PAPER);
        assertTrue(embossed.resistance() < contact);
        assertTrue(embossed.flags().contains(PackFlag.GAP_FLOOR_HOLDS));
        assertEquals(0, embossed.touchingShare(), 0);
    }

    @Test
    void unknownChannelsCountAsMediumAlone() {
        PackResult result = new FlatPack(55 * 2 * 14e-3 * 60e-3).solve(PAPER);
        assertEquals(PAPER / 0.0924, result.resistance(), 1e-9 * result.resistance());
        assertEquals(1, result.channelFactor(), 0);
        assertTrue(result.channelsUnknown());
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
}
