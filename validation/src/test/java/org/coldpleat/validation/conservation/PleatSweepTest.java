package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.coldpleat.model.pleat.PackResult;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.ParallelLegs;
import org.junit.jupiter.api.Test;

/** Shape and conservation of the pleat pack over random geometries, media and closures, seeded; derived here. */
class PleatSweepTest {
    private static final String SOURCE = "conservation, derived here";

    private static final int CASES = 2000;

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

    private static PleatGeometry geometry(SplittableRandom random) {
        double thickness = 0.3e-3 + 0.9e-3 * random.nextDouble();
        double depth = 6e-3 + 16e-3 * random.nextDouble();
        PleatEnds ends = random.nextInt(5) > 0 ? PleatEnds.FOLDED : PleatEnds.PLUGGED;
        return switch (random.nextInt(4)) {
            case 0 ->
                PleatGeometry.rectangular(
                        depth, thickness, logUniform(random, 0.05e-3, 4e-3), logUniform(random, 0.05e-3, 4e-3), ends);
            case 1 -> PleatGeometry.vee(depth, thickness, logUniform(random, 0.1e-3, 4e-3), ends);
            case 2 -> {
                double inner = 8e-3 + 30e-3 * random.nextDouble();
                double fold = random.nextBoolean() ? 0.3e-3 * random.nextDouble() : 0;
                double floor = random.nextInt(3) == 0 ? 0.2e-3 * random.nextDouble() : 0;
                yield PleatGeometry.radial(
                        inner + depth, inner, 15 + random.nextInt(100), thickness, fold, fold, floor, ends);
            }
            default -> {
                double inner = 8e-3 + 30e-3 * random.nextDouble();
                yield PleatGeometry.radialLegsTogether(
                        inner + depth,
                        inner,
                        15 + random.nextInt(60),
                        thickness,
                        logUniform(random, 0.02e-3, 0.4e-3),
                        ends);
            }
        };
    }

    private static PleatPack pack(SplittableRandom random) {
        return new PleatPack(
                geometry(random),
                20 + random.nextInt(60),
                0.03 + 0.1 * random.nextDouble(),
                closure(random),
                OptionalDouble.empty());
    }

    private static double[] randomResistances(SplittableRandom random, int cells) {
        double base = logUniform(random, 5e6, 5e8);
        return random.doubles(cells).map(u -> base * Math.exp(3 * u)).toArray();
    }

    @Test
    void channelFactorIsAtLeastOneAndFinite() {
        SplittableRandom random = new SplittableRandom(101);
        for (int n = 0; n < CASES; n++) {
            PleatPack pack = pack(random);
            PackResult result = pack.solve(logUniform(random, 5e6, 5e8));
            assertTrue(Double.isFinite(result.resistance()), pack.toString());
            assertTrue(result.channelFactor() >= 1, result.channelFactor() + " " + pack);
        }
    }

    @Test
    void flowThroughCellsAndFoldsIsTheWholeFlow() {
        SplittableRandom random = new SplittableRandom(102);
        double flow = 2e-4;
        for (int n = 0; n < CASES; n++) {
            PleatPack pack = pack(random);
            PackResult result = pack.solve(randomResistances(random, 2 + random.nextInt(80)));
            double sum = flow * result.foldShare();
            double[] velocity = result.faceVelocities(flow);
            double[] area = result.cellAreas();
            for (int i = 0; i < result.cells(); i++) {
                sum += velocity[i] * area[i];
            }
            assertTrue(result.channelFactor() >= 1, result.channelFactor() + " " + pack);
            // Rounding of the tridiagonal solve, at worst in crowded packs
            check("flow through cells and folds over the whole flow")
                    .at("case " + n)
                    .expected(1, "1")
                    .computed(sum / flow)
                    .within(1e-8, "rounding of the tridiagonal solve, at worst in crowded packs");
        }
    }

    @Test
    void resistanceRisesWithTheMediumResistance() {
        SplittableRandom random = new SplittableRandom(103);
        for (int n = 0; n < CASES; n++) {
            PleatPack pack = pack(random);
            double low = logUniform(random, 5e6, 5e8);
            double high = low * (1.01 + random.nextDouble());
            assertTrue(pack.resistance(high) > pack.resistance(low), pack.toString());
        }
    }

    @Test
    void dirtOnSomeCellsNeverLowersTheResistance() {
        SplittableRandom random = new SplittableRandom(104);
        for (int n = 0; n < CASES; n++) {
            PleatPack pack = pack(random);
            double[] clean = randomResistances(random, 30);
            double[] dirty = clean.clone();
            for (int i = 0; i < dirty.length; i++) {
                dirty[i] *= random.nextInt(3) == 0 ? 1 + 3 * random.nextDouble() : 1;
            }
            double before = pack.solve(clean).resistance();
            assertTrue(pack.solve(dirty).resistance() >= before * (1 - 1e-12), pack.toString());
        }
    }

    @Test
    void uniformCellsEqualOneResistance() {
        SplittableRandom random = new SplittableRandom(105);
        for (int n = 0; n < 200; n++) {
            PleatPack pack = pack(random);
            double medium = logUniform(random, 5e6, 5e8);
            double[] cells = new double[PleatPack.DEFAULT_CELLS];
            Arrays.fill(cells, medium);
            // two discretizations; cells of a hundredth are off by up to 5e-5 in crowded packs
            double resistance = pack.resistance(medium);
            assertEquals(resistance, pack.solve(cells).resistance(), 6e-5 * resistance);
            assertEquals(pack.solve(medium).resistance(), pack.solve(cells).resistance(), 0);
        }
    }

    @Test
    void cellsConvergeToTheClosedFormOfParallelLegs() {
        SplittableRandom random = new SplittableRandom(106);
        double sum = 0;
        for (int n = 0; n < 500; n++) {
            double thickness = 0.3e-3 + 0.9e-3 * random.nextDouble();
            PleatGeometry pleat = PleatGeometry.rectangular(
                    6e-3 + 16e-3 * random.nextDouble(),
                    thickness,
                    logUniform(random, 0.05e-3, 4e-3),
                    logUniform(random, 0.05e-3, 4e-3),
                    random.nextBoolean() ? PleatEnds.FOLDED : PleatEnds.PLUGGED);
            PleatClosure closure = closure(random);
            double medium = logUniform(random, 5e6, 5e8);
            double exact = ParallelLegs.pleatResistance(pleat, closure, medium);
            PleatPack pack = new PleatPack(pleat, 1, 1).withClosure(closure);
            double uniform = Math.abs(pack.resistance(medium) / exact - 1);
            double usual = error(pack, medium, PleatPack.DEFAULT_CELLS, exact);
            double fine = error(pack, medium, 400, exact);
            check("error with one medium over random parallel legs")
                    .at("case " + n)
                    .toleranceSetAfterwards()
                    .computed(uniform, "1")
                    .below(4e-6, "as claimed");
            // Worst where a gap below 0.1 mm meets a very open medium and only the last millimeter of the leg works
            check("error of the usual cells over random parallel legs")
                    .at("case " + n)
                    .toleranceSetAfterwards()
                    .computed(usual, "1")
                    .below(5e-5, "worst where a gap below 0.1 mm meets a very open medium");
            // Fourth order: four times the cells, a 256th of the error; 1e-9 where error terms cancel by chance
            assertTrue(fine < usual / 200 + 1e-9, fine + " after " + usual + " " + pleat);
            sum += usual;
        }
        check("mean error of the usual cells over random parallel legs")
                .toleranceSetAfterwards()
                .computed(sum / 500, "1")
                .below(1e-6, "as claimed of usual packs, over a harsh sample");
    }

    private static double error(PleatPack pack, double medium, int cells, double exact) {
        double[] uniform = new double[cells];
        Arrays.fill(uniform, medium);
        return Math.abs(pack.solve(uniform).resistance() / exact - 1);
    }

    @Test
    void swappingFlowDirectionOfParallelLegsChangesNothing() {
        SplittableRandom random = new SplittableRandom(107);
        for (int n = 0; n < 200; n++) {
            double wide = logUniform(random, 0.1e-3, 3e-3);
            double narrow = logUniform(random, 0.05e-3, 3e-3);
            PleatGeometry one = PleatGeometry.rectangular(15e-3, 0.7e-3, wide, narrow, PleatEnds.FOLDED);
            PleatGeometry other = PleatGeometry.rectangular(15e-3, 0.7e-3, narrow, wide, PleatEnds.FOLDED);
            double medium = logUniform(random, 5e6, 5e8);
            double first = new PleatPack(one, 1, 1).resistance(medium);
            // Mirror image, so only the path along which pressures are added differs
            check("resistance of parallel legs, flow reversed")
                    .at("case " + n)
                    .expected(first, "1/m2")
                    .computed(new PleatPack(other, 1, 1).resistance(medium))
                    .withinRelative(1e-9, "only the path along which pressures are added differs");
        }
    }

    @Test
    void growsWithoutAJumpAsPleatsAreAddedThroughContact() {
        // Pleat count taken as a continuous number for one pleat: the geometry closes smoothly through contact at the
        // core
        double previous = 0;
        for (double count = 60; count < 110; count += 0.02) {
            PleatGeometry pleat = PleatGeometry.radial(35e-3, 20e-3, count, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED);
            double value = new PleatPack(pleat, 1, 1).resistance(4e7);
            assertTrue(Double.isFinite(value) && value > previous, "count " + count);
            // 0.02 pleats change the pitch at the core by 0.7 micrometers at most, gaps by as much, near contact a
            // tenth of the slip length: below 5 %
            assertTrue(previous == 0 || value < 1.05 * previous, "count " + count + ": " + value / previous);
            previous = value;
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.PLEATS, quantity, SOURCE);
    }
}
