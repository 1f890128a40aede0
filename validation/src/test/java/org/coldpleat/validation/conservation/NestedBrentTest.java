package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.validation.benchmark.NestedBrent;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The solver of the model against the bracketing solvers of two libraries nested three deep over a network written down separately.
 * Tolerance 1e-9: both stop near rounding, but stiff valves magnify it.
 */
class NestedBrentTest {
    private static final double TOLERANCE = 1e-9;

    /** An engine without a steady state: the flows of the plain search, which ends where they jump, miss by more [1]. */
    private static final double JUMP = 0.01;

    @ParameterizedTest
    @EnumSource
    void fastSolverAgreesWithNestedBrent(NestedBrent.Library library) {
        for (long seed = 500_000; seed < 500_400; seed++) {
            RandomEngine engine = RandomEngine.of(seed);
            OperatingPoint point = engine.circuit().solve(engine.speed(), engine.temperature());
            FilterState filter = engine.filter()
                    .solve(point.filterFlow(), engine.circuit().lubricant().at(engine.temperature()));
            NestedBrent.Answer plain = new NestedBrent(
                            library, engine.circuit(), engine.filter(), engine.speed(), engine.temperature())
                    .solve();
            String place = "seed " + seed;
            if (point.status() == SolveStatus.NO_STEADY_STATE && point.pumpPressure() > RandomCircuitsTest.RUNAWAY) {
                assertTrue(surplus(engine, plain) > JUMP, place);
                continue;
            }
            assertEquals(plain.starved(), point.galleryStarved(), place);
            same(library, "pump pressure", "Pa", plain.pumpPressure(), point.pumpPressure(), place);
            same(library, "filter flow", "m3/s", plain.filterFlow(), point.filterFlow(), place);
            same(library, "filter drop", "Pa", plain.filterDrop(), point.filterDrop(), place);
            same(library, "gallery pressure", "Pa", plain.galleryPressure(), point.galleryPressure(), place);
            same(library, "flow of the medium", "m3/s", plain.mediumFlow(), filter.mediumFlow(), place);
        }
    }

    /** What the pump delivers beyond what goes through gallery and relief valves, over the delivery [1]; none is ideal there. */
    private static double surplus(RandomEngine engine, NestedBrent.Answer plain) {
        EngineCircuit circuit = engine.circuit();
        Fluid oil = circuit.lubricant().at(engine.temperature());
        double delivered = circuit.pump().delivery(engine.speed(), plain.pumpPressure(), oil.dynamicViscosity());
        double left = delivered - plain.filterFlow();
        for (Relief relief : circuit.reliefs()) {
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double sensed = outlet ? plain.pumpPressure() : plain.galleryPressure();
            left -= relief.law()
                    .orElseThrow()
                    .at(sensed, plain.pumpPressure(), oil)
                    .flowRate();
        }
        return Math.abs(left / delivered);
    }

    private static void same(
            NestedBrent.Library library, String quantity, String unit, double expected, double actual, String place) {
        ExternalCheck.of(
                        Topic.CIRCUIT,
                        quantity + " of random engines",
                        switch (library) {
                            case COMMONS_MATH -> "three nested searches by Brent's method, Commons Math 3.6.1";
                            case HIPPARCHUS -> "three nested searches by the bracketing solver of Hipparchus 4.0.3";
                        })
                .at(place)
                .expected(expected, unit)
                .computed(actual)
                .withinRelative(TOLERANCE, "both stop near rounding, stiff valves magnify it");
    }
}
