package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Error and slope of the pleat with one medium, over the range of round packs and well beyond. */
class UniformPleatTest {
    private static double logUniform(SplittableRandom random, double low, double high) {
        return low * Math.exp(random.nextDouble() * Math.log(high / low));
    }

    private static PleatClosure closure(SplittableRandom random) {
        return new PleatClosure(
                logUniform(random, PleatClosure.SLIP_COEFFICIENT_LOW, PleatClosure.SLIP_COEFFICIENT_HIGH),
                logUniform(random, PleatClosure.IN_PLANE_RATIO_LOW, PleatClosure.IN_PLANE_RATIO_HIGH),
                random.nextInt(4) > 0,
                1 + PleatClosure.GAP_FACTOR_HALF_WIDTH * (2 * random.nextDouble() - 1));
    }

    /** Sharp folds on a round core, loose to crowded. */
    private static PleatGeometry round(SplittableRandom random) {
        double inner = 15e-3 + 15e-3 * random.nextDouble();
        return PleatGeometry.radial(
                inner + 10e-3 + 8e-3 * random.nextDouble(),
                inner,
                35 + random.nextInt(45),
                0.4e-3 + 0.4e-3 * random.nextDouble(),
                0,
                0,
                0,
                PleatEnds.FOLDED);
    }

    /** Parallel, sharp, embossed, pushed together, down to a gap of a twentieth of a millimeter; folded or plugged. */
    private static PleatGeometry any(SplittableRandom random) {
        double thickness = 0.3e-3 + 0.9e-3 * random.nextDouble();
        double depth = 6e-3 + 16e-3 * random.nextDouble();
        double inner = 8e-3 + 30e-3 * random.nextDouble();
        PleatEnds ends = random.nextInt(5) > 0 ? PleatEnds.FOLDED : PleatEnds.PLUGGED;
        return switch (random.nextInt(4)) {
            case 0 ->
                PleatGeometry.rectangular(
                        depth, thickness, logUniform(random, 0.05e-3, 4e-3), logUniform(random, 0.05e-3, 4e-3), ends);
            case 1 -> PleatGeometry.vee(depth, thickness, logUniform(random, 0.1e-3, 4e-3), ends);
            case 2 -> {
                double fold = random.nextBoolean() ? 0.3e-3 * random.nextDouble() : 0;
                double floor = random.nextBoolean() ? 0.2e-3 * random.nextDouble() : 0;
                yield PleatGeometry.radial(
                        inner + depth, inner, 15 + random.nextInt(100), thickness, fold, fold, floor, ends);
            }
            default ->
                PleatGeometry.radialLegsTogether(
                        inner + depth,
                        inner,
                        15 + random.nextInt(60),
                        thickness,
                        logUniform(random, 0.02e-3, 0.4e-3),
                        ends);
        };
    }

    private static double cells(PleatGeometry pleat, PleatClosure closure, double medium, int cells) {
        double[] resistance = new double[cells];
        Arrays.fill(resistance, medium);
        return new TwoChannelSolver(pleat, closure, resistance).pleatResistance;
    }

    /** Of fourth order: the cell in half leaves a sixteenth of the error. */
    private static double exact(PleatGeometry pleat, PleatClosure closure, double medium) {
        return (16 * cells(pleat, closure, medium, 1600) - cells(pleat, closure, medium, 800)) / 15;
    }

    @Test
    void roundPacksAreExactToAMillionth() {
        SplittableRandom random = new SplittableRandom(21);
        for (int n = 0; n < 200; n++) {
            PleatGeometry pleat = round(random);
            PleatClosure closure = closure(random);
            double medium = logUniform(random, 1e7, 1e8);
            double exact = exact(pleat, closure, medium);
            assertEquals(exact, new UniformPleat(pleat, closure).at(medium).resistance(), 1e-6 * exact);
            assertEquals(exact, cells(pleat, closure, medium, PleatPack.DEFAULT_CELLS), 2e-6 * exact);
        }
    }

    @Test
    void anyPackIsExactToAFewMillionths() {
        SplittableRandom random = new SplittableRandom(22);
        for (int n = 0; n < 200; n++) {
            PleatGeometry pleat = any(random);
            PleatClosure closure = closure(random);
            double medium = logUniform(random, 5e6, 5e8);
            double exact = exact(pleat, closure, medium);
            assertEquals(exact, new UniformPleat(pleat, closure).at(medium).resistance(), 4e-6 * exact);
            assertEquals(exact, cells(pleat, closure, medium, PleatPack.DEFAULT_CELLS), 5e-5 * exact);
        }
    }

    @Test
    void sharpEdgesOfSheetsThatCarryNoOilAreExactToATenThousandth() {
        SplittableRandom random = new SplittableRandom(23);
        for (int n = 0; n < 200; n++) {
            PleatGeometry pleat = PleatGeometry.vee(
                    6e-3 + 16e-3 * random.nextDouble(), 0.5e-3, logUniform(random, 0.3e-3, 4e-3), PleatEnds.PLUGGED);
            double medium = logUniform(random, 5e6, 5e8);
            double exact = exact(pleat, PleatClosure.PLAIN, medium);
            double found =
                    new UniformPleat(pleat, PleatClosure.PLAIN).at(medium).resistance();
            assertEquals(exact, found, 1e-4 * exact);
        }
    }

    @Test
    void slopeIsThatOfTheResistance() {
        SplittableRandom random = new SplittableRandom(24);
        double step = 1e-4;
        for (int n = 0; n < 500; n++) {
            UniformPleat pleat = new UniformPleat(any(random), closure(random));
            double medium = logUniform(random, 5e6, 5e8);
            double above = pleat.at(medium * Math.exp(step)).resistance();
            double below = pleat.at(medium * Math.exp(-step)).resistance();
            // third differences, and rounding over the step
            assertEquals(Math.log(above / below) / (2 * step), pleat.at(medium).slope(), 2e-9);
        }
    }

    @Test
    void mouthOfACrowdedPackGoesWithTheMedium() {
        // a gap of a micrometer at the mouth, where oil enters through the faces instead: the loss is 1/k
        PleatGeometry pleat = PleatGeometry.rectangular(12e-3, 0.6e-3, 1e-6, 0.5e-3, PleatEnds.FOLDED);
        UniformPleat one = new UniformPleat(pleat, PleatClosure.DEFAULT);
        double step = 1e-4;
        double above = one.at(2.5e7 * Math.exp(step)).resistance();
        double below = one.at(2.5e7 * Math.exp(-step)).resistance();
        assertEquals(Math.log(above / below) / (2 * step), one.at(2.5e7).slope(), 2e-9);
    }

    @Test
    void wholePackAndItsCurveAgree() {
        SplittableRandom random = new SplittableRandom(25);
        for (int n = 0; n < 50; n++) {
            PleatPack pack = new PleatPack(round(random), 50, 0.06).withStatedArea(0.1);
            double medium = logUniform(random, 1e7, 1e8);
            double resistance = pack.resistance(medium);
            assertEquals(resistance, pack.summary(medium).resistance(), 0);
            assertEquals(resistance, pack.solve(medium).resistance(), 2e-6 * resistance);
            assertTrue(pack.curve().at(medium).slope() > 0
                    && pack.curve().at(medium).slope() <= 1);
        }
    }
}
