package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.ElementLoad;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PackResult;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Dirt laid down along the leg by the flow of the pack, step by step. */
class LoadedPackTest {
    private static final String SOURCE = "conservation, derived here";

    private static final double CLEAN_RESISTANCE = 3e7;
    private static final double LOT = 0.0002;
    private static final BlockingLaw LAW = new BlockingLaw(1, 20);

    /** Tight pleats: gaps of 0.3 mm over 15 mm of depth, so that the clean flow crowds at both ends. */
    private static final PleatPack TIGHT =
            new PleatPack(PleatGeometry.rectangular(0.015, 0.6e-3, 0.3e-3, 0.3e-3, PleatEnds.FOLDED), 50, 0.06);

    private record Step(PackResult pack, ElementLoad load, double mediumRatio) {}

    @Test
    void flowSharesOfThePackAndItsFoldsMakeUpTheWhole() {
        PackResult clean = TIGHT.solve(CLEAN_RESISTANCE);
        ElementLoad load = ElementLoad.clean(clean.cellAreas(), 1);
        double inCells = Arrays.stream(load.flowShares(clean.relativeFaceVelocities(), clean.effectiveArea()))
                .sum();
        assertTrue(clean.foldShare() > 0);
        // rounding of sixty cells and of the solver's elimination
        check("flow shares of cells and folds")
                .expected(1 - clean.foldShare(), "1")
                .computed(inCells)
                .within(1e-9, "rounding of sixty cells and of the elimination");
    }

    @Test
    void tightPackResistsMoreAndLosesItsChannelFactorAsItLoads() {
        List<Step> steps = load(TIGHT, 160);
        for (int i = 1; i < steps.size(); i++) {
            assertTrue(steps.get(i).pack.resistance() > steps.get(i - 1).pack.resistance(), "step " + i);
            assertTrue(steps.get(i).pack.channelFactor() < steps.get(i - 1).pack.channelFactor(), "step " + i);
            assertTrue(steps.get(i).mediumRatio >= steps.get(i - 1).mediumRatio, "step " + i);
        }
        assertTrue(steps.get(0).pack.channelFactor() > 4);
        check("channel factor of a heavily loaded pack")
                .expected(1, "1")
                .computed(steps.get(160).pack.channelFactor())
                .within(0.01, "the medium outweighs the channels");
    }

    /**
     * The ends of the legs take the dirt first. Let w be what the middle passes more than the ends, x = K m. Dirt pulls w
     * up by the unevenness it has built (dw/dx = -w once the medium outweighs the channels), the channels still push
     * flow to the ends by what is left of them, b exp(-x), whose loss lifts w: together {@code w = b (x - x0) exp(-x)},
     * with x0 where the flow turned.
     */
    @Test
    void flowTurnsFromTheEndsToTheMiddleAndThenEvensOut() {
        List<Step> steps = load(TIGHT, 200);
        assertTrue(endOverMiddle(steps.get(0).pack) > 2, "clean");
        int turn = 0;
        while (endOverMiddle(steps.get(turn).pack) > 1) {
            turn++;
        }
        double perLot = LAW.coefficient() * LOT / steps.get(0).pack.effectiveArea();
        double decay = (1 - endOverMiddle(steps.get(200).pack)) / (1 - endOverMiddle(steps.get(160).pack));
        double expected = (200.0 - turn) / (160 - turn) * Math.exp(-40 * perLot);
        // lots of K m = 0.05 shorten the decay by half of that, 0.025 x 1.8; x0 belongs to the early, not yet linear
        // part
        ExternalCheck.of(Topic.LOADING, "decay of unevenness in a loaded pack", "derived here")
                .expected(expected, "1")
                .computed(decay)
                .withinRelative(
                        0.05, "lots of K m 0.05 shorten the decay by half of that; the turn belongs to the early part");
    }

    @Test
    void allDirtIsInTheCellsOrTheFolds() {
        List<Step> steps = load(TIGHT, 100);
        Step last = steps.get(steps.size() - 1);
        check("dirt in cells and folds")
                .expected(100 * LOT, "kg")
                .computed(last.load.mass())
                .withinRelative(1e-12, "rounding");
    }

    @Test
    void mediumWithoutChannelsFollowsTheBlockingLawItself() {
        FlatPack flat = new FlatPack(0.1);
        List<Step> steps = load(flat, 40);
        double clean = steps.get(0).pack.resistance();
        for (int i = 0; i < steps.size(); i++) {
            double expected = LAW.resistanceRatio(i * LOT / 0.1);
            ExternalCheck.of(Topic.LOADING, "resistance ratio of a flat sheet under load", "derived here")
                    .at("step " + i)
                    .expected(expected, "1")
                    .computed(steps.get(i).pack.resistance() / clean)
                    .withinRelative(1e-12, "rounding");
        }
    }

    /** The pack before each lot of dirt and after the last. */
    private static List<Step> load(PackModel model, int lots) {
        List<Step> steps = new ArrayList<>();
        PackResult pack = model.solve(CLEAN_RESISTANCE);
        ElementLoad load = ElementLoad.clean(pack.cellAreas(), 1);
        steps.add(new Step(pack, load, 1));
        for (int i = 0; i < lots; i++) {
            double[] shares = load.flowShares(pack.relativeFaceVelocities(), pack.effectiveArea());
            load = load.deposit(shares, new double[] {LOT});
            double[] resistance = Arrays.stream(load.resistanceRatios(LAW))
                    .map(ratio -> CLEAN_RESISTANCE * ratio)
                    .toArray();
            pack = model.solve(resistance);
            steps.add(new Step(pack, load, load.mediumRatio(LAW)));
        }
        return steps;
    }

    /** Face velocity at the inlet end of the leg over that in its middle [1]. */
    private static double endOverMiddle(PackResult pack) {
        double[] velocity = pack.relativeFaceVelocities();
        return velocity[0] / velocity[velocity.length / 2];
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
