package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.validation.benchmark.NestedBrent;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * The solver of the model against Commons Math's Brent solver nested three deep over a network written down separately.
 * Tolerance 1e-9: both stop near rounding, but stiff valves magnify it.
 */
class NestedBrentTest {
    private static final double TOLERANCE = 1e-9;

    @Test
    void fastSolverAgreesWithNestedBrent() {
        for (long seed = 500_000; seed < 500_400; seed++) {
            RandomEngine engine = RandomEngine.of(seed);
            OperatingPoint point = engine.circuit().solve(engine.speed(), engine.temperature());
            FilterState filter = engine.filter()
                    .solve(point.filterFlow(), engine.circuit().lubricant().at(engine.temperature()));
            NestedBrent.Answer plain =
                    new NestedBrent(engine.circuit(), engine.filter(), engine.speed(), engine.temperature()).solve();
            String place = "seed " + seed;
            assertEquals(plain.starved(), point.galleryStarved(), place);
            same("pump pressure", "Pa", plain.pumpPressure(), point.pumpPressure(), place);
            same("filter flow", "m3/s", plain.filterFlow(), point.filterFlow(), place);
            same("filter drop", "Pa", plain.filterDrop(), point.filterDrop(), place);
            same("gallery pressure", "Pa", plain.galleryPressure(), point.galleryPressure(), place);
            same("flow of the medium", "m3/s", plain.mediumFlow(), filter.mediumFlow(), place);
        }
    }

    private static void same(String quantity, String unit, double expected, double actual, String place) {
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        quantity + " of random engines",
                        "three nested searches by Brent's method, Commons Math 3.6.1")
                .at(place)
                .expected(expected, unit)
                .computed(actual)
                .withinRelative(TOLERANCE, "both stop near rounding, stiff valves magnify it");
    }
}
