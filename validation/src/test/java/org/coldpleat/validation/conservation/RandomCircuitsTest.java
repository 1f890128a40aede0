package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.CircuitSolver;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.SolveStatus;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterSolver;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.validation.analytic.OneViscosity;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Conservation over many random engines, filters, speeds and temperatures. */
class RandomCircuitsTest {
    private static final long ENGINES = 100_000;
    private static final long MANY_ENGINES = 2_000_000;

    /** Steps of the search in which any engine must be solved [1]. */
    private static final int STEPS = 60;

    /** The solver stops at 1e-13 of the flow; 1e-9 leaves room for cancellation in the sums. */
    private static final double BALANCE = 1e-9;

    /**
     * Some engines of the sample have no relief valve that works. Above this pressure [Pa] the heat of pressing oil through a
     * film, p/(rho cp) = 12 K, can outrun the film's own cooling, and the answer "no steady state" is the right one.
     */
    static final double RUNAWAY = 20e6;

    @Test
    void everyRandomEngineConvergesAndBalances() {
        List<String> faults = faults(ENGINES);
        String quantity = "faults among 100 000 random engines: flow, pressure, heat within 1e-9, pressures in order";
        ExternalCheck.of(Topic.CIRCUIT, quantity, "conservation, derived here").exactly(0, faults.size());
    }

    @Test
    @Tag("nightly")
    void twoMillionRandomEnginesConvergeAndBalance() {
        faults(MANY_ENGINES);
    }

    private static List<String> faults(long engines) {
        List<String> faults = LongStream.range(0, engines)
                .parallel()
                .mapToObj(RandomCircuitsTest::faultOf)
                .flatMap(Optional::stream)
                .collect(Collectors.toList());
        assertEquals(
                0,
                faults.size(),
                () -> faults.size() + " faults, first: " + faults.subList(0, Math.min(5, faults.size())));
        return faults;
    }

    /** Warmer oil at the same speed: less drop, unless a bypass valve, a relief valve or the pickup steps in. */
    @Test
    void dropFallsWithTemperatureUntilAValveOrThePickupStepsIn() {
        int compared = 0;
        for (long seed = 0; seed < 20_000; seed++) {
            RandomEngine engine = RandomEngine.of(seed);
            FilterSolver split = engine.filter().solver();
            CircuitSolver solver = engine.circuit().solver(split);
            double before = Double.NaN;
            for (double warmer = 0; warmer <= 40; warmer += 10) {
                solver.solve(engine.speed(), engine.temperature() + warmer, engine.temperature() + warmer);
                OperatingPoint point = solver.point();
                boolean plain = point.status() == SolveStatus.CONVERGED
                        && !split.state().isBypassOpen()
                        && point.reliefFlow() < 1e-9 * point.pumpFlow()
                        && !point.suctionLimited()
                        && !point.galleryStarved();
                if (plain && !Double.isNaN(before)) {
                    assertTrue(point.filterDrop() <= before * (1 + 1e-9), "seed " + seed + ", " + warmer + " K warmer");
                    compared++;
                }
                before = plain ? point.filterDrop() : Double.NaN;
            }
        }
        assertTrue(compared > 20_000, "compared " + compared);
    }

    /** The sample must reach the corners it is meant for. */
    @Test
    void randomEnginesReachEveryRegime() {
        int[] seen = new int[5];
        for (long seed = 0; seed < 3000; seed++) {
            RandomEngine engine = RandomEngine.of(seed);
            OperatingPoint point = engine.circuit().solve(engine.speed(), engine.temperature());
            seen[0] += point.galleryStarved() ? 1 : 0;
            seen[1] += point.suctionLimited() ? 1 : 0;
            seen[2] += point.reliefFlow() > 0 ? 1 : 0;
            seen[3] += point.filmTemperature() > engine.temperature() + 5 ? 1 : 0;
            seen[4] += state(engine, point).isBypassOpen() ? 1 : 0;
        }
        for (int count : seen) {
            assertTrue(count > 50, () -> java.util.Arrays.toString(seen));
        }
    }

    /** All laminar, ideal outlet-sensing relief, no side flow: the filter drop never falls as oil thickens. */
    @Test
    void filterDropNeverFallsWithViscosity() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 500; i++) {
            double filter = 1e8 * Math.pow(300, random.nextDouble());
            double gallery = 1e9 * Math.pow(100, random.nextDouble());
            Pump pump = Pump.unlimited(7e-6, random.nextDouble() * 1e-11);
            double last = 0;
            for (double mu = 1e-3; mu < 100; mu *= 1.5) {
                OperatingPoint point = new EngineCircuit(
                                pump,
                                List.of(Relief.ideal(Relief.Sensing.PUMP_OUTLET, 450e3)),
                                AdditiveLaw.laminarOnly(filter),
                                new Gallery(0, Bearings.isothermal(1 / gallery), List.of()),
                                new OneViscosity(mu, 870))
                        .solve(15, 300);
                assertTrue(point.filterDrop() >= last * (1 - 1e-8));
                last = point.filterDrop();
            }
        }
    }

    private static Optional<String> faultOf(long seed) {
        RandomEngine engine = RandomEngine.of(seed);
        OperatingPoint point = engine.circuit().solve(engine.speed(), engine.temperature());
        FilterState filter = state(engine, point);
        boolean noRelief = engine.circuit().reliefs().isEmpty();
        if (noRelief && point.status() == SolveStatus.NO_STEADY_STATE && point.pumpPressure() > RUNAWAY) {
            return Optional.empty();
        }
        if (point.status() == SolveStatus.FILM_TOO_HOT && point.filmTemperature() >= 600) {
            return Optional.empty();
        }
        if (point.steps() >= STEPS) {
            return Optional.of(seed + " took " + point.steps() + " steps");
        }
        if (point.status() != SolveStatus.CONVERGED || !filter.converged()) {
            return Optional.of(seed + " " + point.status() + " " + filter.converged() + " " + point);
        }
        OperatingPoint.Residuals miss = point.residuals();
        boolean balanced = miss.flow() < BALANCE && miss.pressure() < BALANCE && miss.power() < BALANCE;
        boolean ordered = point.pumpPressure() >= point.galleryPressure()
                && point.galleryPressure() >= point.bearingPressure()
                && point.bearingPressure() >= 0;
        boolean split = filter.flowResidual() < BALANCE && filter.pressureResidual() < BALANCE;
        boolean same = Math.abs(filter.totalDrop() - point.filterDrop()) <= BALANCE * point.filterDrop();
        return balanced && ordered && split && same
                ? Optional.empty()
                : Optional.of(seed + " " + miss + " " + filter.flowResidual() + " " + filter.pressureResidual() + " "
                        + point);
    }

    private static FilterState state(RandomEngine engine, OperatingPoint point) {
        FilterAssembly filter = engine.filter();
        Fluid oil = engine.circuit().lubricant().at(engine.temperature());
        return filter.solve(point.filterFlow(), oil);
    }
}
