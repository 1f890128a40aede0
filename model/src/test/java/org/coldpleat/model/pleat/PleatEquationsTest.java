package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Finite volumes against the same equations integrated another way. */
class PleatEquationsTest {
    private static final List<PleatClosure> CLOSURES = List.of(
            PleatClosure.DEFAULT,
            PleatClosure.PLAIN,
            new PleatClosure(0.5, 3, true, 1),
            new PleatClosure(2, 2, false, 0.9),
            new PleatClosure(1, 1, true, 1.1));

    private static Stream<Arguments> parallelLegs() {
        return Stream.of(PleatEnds.values())
                .flatMap(ends -> Stream.of(
                        PleatGeometry.rectangular(13e-3, 0.7e-3, 0.9e-3, 0.6e-3, ends),
                        PleatGeometry.rectangular(17e-3, 0.5e-3, 0.3e-3, 0.7e-3, ends)))
                .flatMap(pleat -> CLOSURES.stream().map(closure -> Arguments.of(pleat, closure)));
    }

    private static Stream<Arguments> taperedLegs() {
        return Stream.of(PleatEnds.values())
                .flatMap(ends -> Stream.of(
                        PleatGeometry.vee(14e-3, 0.6e-3, 1.2e-3, ends),
                        PleatGeometry.radial(35e-3, 20e-3, 55, 0.7e-3, 0.3e-3, 0.2e-3, 0, ends)))
                .flatMap(pleat -> CLOSURES.stream().map(closure -> Arguments.of(pleat, closure)))
                // without flow in the sheet the sharp tips of a vee hold no oil and no pressure can be stated there
                .filter(row -> ((PleatClosure) row.get()[1]).inPlaneRatio() > 0);
    }

    private static PackResult pack(PleatGeometry pleat, PleatClosure closure, int cells) {
        double[] medium = new double[cells];
        Arrays.fill(medium, 2.5e7);
        return new PleatPack(pleat, 1, 1).withClosure(closure).solve(medium);
    }

    @ParameterizedTest
    @MethodSource({"parallelLegs", "taperedLegs"})
    void finiteVolumesTendToTheSolutionWithTheSquareOfTheCell(PleatGeometry pleat, PleatClosure closure) {
        IntegratedPleat exact = new IntegratedPleat(pleat, closure, 2.5e7);
        PackResult coarse = pack(pleat, closure, 200);
        PackResult fine = pack(pleat, closure, 400);
        double limit = (4 * fine.resistance() - coarse.resistance()) / 3;
        assertEquals(exact.total, limit, 2e-7 * exact.total);
        double folds = (4 * fine.foldShare() - coarse.foldShare()) / 3;
        assertEquals(exact.foldShare, folds, 2e-7);
    }

    @ParameterizedTest
    @MethodSource({"parallelLegs", "taperedLegs"})
    void faceVelocityFollowsThePressureAcrossTheLeg(PleatGeometry pleat, PleatClosure closure) {
        int cells = 400;
        PackResult result = pack(pleat, closure, cells);
        IntegratedPleat exact = new IntegratedPleat(pleat, closure, 2.5e7);
        double[] velocity = result.relativeFaceVelocities();
        for (int i = 0; i < cells; i++) {
            // cells are clustered by a cosine and hold means
            double left = (1 - Math.cos(Math.PI * i / cells)) / 2;
            double right = (1 - Math.cos(Math.PI * (i + 1) / cells)) / 2;
            double expected = exact.difference((left + right) / 2) / 2.5e7 * result.effectiveArea();
            assertEquals(expected, velocity[i], 1e-4, "cell " + i);
        }
    }

    @Test
    void mediumAloneIsDarcysLawOfLegsAndFolds() {
        PleatGeometry pleat = PleatGeometry.rectangular(13e-3, 0.7e-3, 0.9e-3, 0.6e-3, PleatEnds.FOLDED);
        double legs = 2 * (13e-3 - 1.4e-3);
        double folds = 0.7e-3 * (2 * 0.92 + 2 * 0.16) + 0.9e-3 + 0.6e-3;
        assertEquals(
                2.5e7 / (legs + folds),
                pack(pleat, PleatClosure.DEFAULT, 50).whole().mediumResistance(),
                1e-3);
        assertEquals(legs + folds, pack(pleat, PleatClosure.DEFAULT, 50).effectiveArea(), 1e-15);
    }

    @Test
    void embossingHoldsTheStubOpenWhereTheTaperWouldCloseIt() {
        // upstream gap 0.105 mm at the inlet end, widening inward: straight on, the stub would have 0.066 mm
        PleatGeometry pleat = new PleatGeometry(
                13e-3, 0.7e-3, 0.105e-3, 1.4e-3, 1.4e-3, 0.105e-3, 2.9e-3, 2.9e-3, 0.1e-3, PleatEnds.FOLDED);
        double exact = new IntegratedPleat(pleat, PleatClosure.DEFAULT, 2.5e7).total;
        double coarse = pack(pleat, PleatClosure.DEFAULT, 400).resistance();
        double fine = pack(pleat, PleatClosure.DEFAULT, 800).resistance();
        assertEquals(exact, (4 * fine - coarse) / 3, 1e-6 * exact);
        double without = pack(pleat.withGapFloor(0), PleatClosure.DEFAULT, 800).resistance();
        assertTrue(without > 1.2 * fine);
    }
}
