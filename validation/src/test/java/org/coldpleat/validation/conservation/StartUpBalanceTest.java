package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.FixedStepStart;
import org.coldpleat.model.coldstart.StartEvent.Kind;
import org.coldpleat.model.coldstart.StartPhase;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartStatus;
import org.coldpleat.model.coldstart.StartSweep;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.validation.benchmark.InventedOil;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Balances, shape and convergence of starts of invented engines. */
class StartUpBalanceTest {
    private static final String SOURCE = "conservation, derived here";

    private static StartUpSpec spec(double closing, double horizon, double tolerance) {
        SpringValve valve = new SpringValve(100e3, 11e-3, 1200, 3e-3, 1, 0.62, AdditiveLaw.NONE, 1e-16, 0, closing);
        Restrictor jets = new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0);
        EngineCircuit engine = new EngineCircuit(
                Pump.unlimited(3e-6, 2e-12),
                List.of(Relief.linear(Relief.Sensing.PUMP_OUTLET, 400e3, 2e8)),
                AdditiveLaw.NONE,
                new Gallery(1e8, new Bearings(5e-12, 2e-8, 0.3, 0, 0.5), List.of(jets)),
                new InventedOil(90, 13.5));
        StartSchedule schedule = new StartSchedule(List.of(
                new StartPhase(2, 4, 0, 0), new StartPhase(60, 20, 3000, 200), StartPhase.endless(50, 4500, 500)));
        return new StartUpSpec(
                engine,
                FilterAssembly.ofPack(2e9).withBypass(BypassLocation.BASE, valve),
                new ThermalModel(1.5, 15e3, 0.2e-3, 150, 0, 40, 3, 50, 258),
                Optional.empty(),
                schedule,
                258,
                0.15e-3,
                333,
                horizon,
                tolerance);
    }

    private static double closing(double tolerance) {
        StartUpSpec spec = spec(90e3, 200, tolerance);
        FilterAssembly loaded = spec.filter().withElementResistance(8e9);
        return StartUp.run(spec.withFilter(loaded)).closingTime().orElseThrow();
    }

    @Test
    void heatAndOilAreAccountedForInRandomEngines() {
        int completed = 0;
        for (long seed = 0; seed < 60; seed++) {
            RandomEngine random = RandomEngine.of(seed);
            SplittableRandom more = new SplittableRandom(seed);
            double start = more.nextDouble(243, 300);
            ThermalModel thermal = new ThermalModel(
                    more.nextDouble(1, 10),
                    more.nextDouble(1e4, 1e5),
                    more.nextInt(4) == 0 ? 0 : 0.3e-3,
                    0,
                    0,
                    more.nextDouble(10, 100),
                    more.nextDouble(0, 10),
                    more.nextDouble(10, 100),
                    start);
            StartUpResult result = StartUp.run(new StartUpSpec(
                    random.circuit(),
                    random.filter(),
                    thermal,
                    Optional.empty(),
                    StartSchedule.steady(random.speed(), more.nextDouble(0, 5000), more.nextDouble(0, 500)),
                    start,
                    more.nextInt(3) == 0 ? 0 : 0.2e-3,
                    353,
                    120,
                    StartUpSpec.USUAL_TOLERANCE));
            String text = "seed " + seed + " " + result.status();
            if (result.status() != StartStatus.COMPLETED) {
                continue;
            }
            completed++;
            check("heat balance of a start")
                    .at(text)
                    .computed(result.balance().orElseThrow().residual(), "1")
                    .below(1e-6, "stated accuracy of the integration");
            double through = result.total().filteredVolume() + result.total().unfilteredVolume();
            double pumped = result.total().pumpedVolume();
            assertTrue(result.total().unfilteredVolume() <= pumped * (1 + 1e-9), text);
            assertTrue(through <= pumped * (1 + 1e-9), text);
            // both are sums of pieces of time
            assertTrue(result.total().openSeconds() <= result.endTime() * (1 + 1e-12), text);
            assertTrue(result.events().size() < 60, text);
            for (StartPoint point : result.series()) {
                check("flows of medium, bypass and relief against the pump")
                        .at(text)
                        .expected(point.pumpFlow(), "m3/s")
                        .computed(point.mediumFlow() + point.bypassFlow() + point.reliefFlow())
                        .withinRelative(1e-8, "rounding and the solver");
            }
        }
        assertEquals(60, completed);
    }

    @Test
    void temperaturesRiseTowardTheirSteadyStateAndNeverPassIt() {
        StartUpResult result = StartUp.run(spec(90e3, 20e3, 1e-5));
        List<StartPoint> series = result.series();
        StartPoint last = series.get(series.size() - 1);
        StartPoint before = last;
        for (StartPoint point : series) {
            assertTrue(point.oilTemperature() <= last.oilTemperature() + 1e-4, point::toString);
            assertTrue(point.metalTemperature() <= last.metalTemperature() + 1e-4, point::toString);
            assertTrue(point.elementTemperature() <= last.elementTemperature() + 1e-4, point::toString);
            before = point.time() < 15e3 ? point : before;
        }
        check("oil temperature between 15 000 s and the end")
                .expected(before.oilTemperature(), "K")
                .computed(last.oilTemperature())
                .within(1e-3, "rest of the approach");
        assertTrue(result.balance().orElseThrow().residual() < 1e-6);
    }

    @Test
    void valveTimesConvergeWithTheTolerance() {
        double exact = closing(1e-11);
        double last = Double.POSITIVE_INFINITY;
        for (double tolerance : new double[] {1e-3, 1e-5, 1e-7}) {
            double miss = Math.abs(closing(tolerance) - exact);
            // a hundredth of the tolerance leaves at most a fifth of the error
            assertTrue(miss < last / 5, "tolerance " + tolerance + " miss " + miss);
            last = miss;
        }
        check("time of closing at the usual tolerance against 1e-11")
                .expected(exact, "s")
                .computed(closing(StartUpSpec.USUAL_TOLERANCE))
                .within(1e-3, "stated accuracy of the usual tolerance");
    }

    @Test
    void fixedFineStepsGiveTheSameTimesAndVolumes() {
        StartUpSpec thin = spec(90e3, 110, 1e-7);
        StartUpSpec spec = thin.withFilter(thin.filter().withElementResistance(4e9));
        StartUpResult result = StartUp.run(spec);
        double closing = result.closingTime().orElseThrow();
        double coarse = FixedStepStart.run(spec, 0.01).closingTime().orElseThrow();
        FixedStepStart fine = FixedStepStart.run(spec, 0.005);
        // a valve moves at the end of the step in which it crosses
        ExternalCheck.of(Topic.START, "time of closing against steps of 10 ms", "steps of fixed length, derived here")
                .expected(closing, "s")
                .computed(coarse)
                .within(0.02, "a valve moves at the end of the step in which it crosses");
        ExternalCheck.of(Topic.START, "time of closing against steps of 5 ms", "steps of fixed length, derived here")
                .expected(closing, "s")
                .computed(fine.closingTime().orElseThrow())
                .within(0.01, "a valve moves at the end of the step in which it crosses");
        ExternalCheck.of(Topic.START, "unfiltered oil against steps of 5 ms", "steps of fixed length, derived here")
                .expected(result.total().unfilteredVolume(), "m3")
                .computed(fine.unfilteredVolume())
                .withinRelative(1e-3, "first order of the steps");
        ExternalCheck.of(Topic.START, "filtered oil against steps of 5 ms", "steps of fixed length, derived here")
                .expected(result.total().filteredVolume(), "m3")
                .computed(fine.filteredVolume())
                .withinRelative(1e-3, "first order of the steps");
        StartPoint last = result.series().get(result.series().size() - 1);
        ExternalCheck.of(Topic.START, "oil temperature against steps of 5 ms", "steps of fixed length, derived here")
                .expected(fine.oilTemperature(), "K")
                .computed(last.oilTemperature())
                .within(1e-3, "first order of the steps");
    }

    @Test
    void stepsOfAMillisecondGiveTheFillTimeAndTheFirstClosing() {
        StartUpSpec warm = spec(100e3, 20, 1e-8).coldSoakedAt(257);
        StartUpResult result = StartUp.run(warm);
        FixedStepStart half = FixedStepStart.run(warm, 0.5e-3);
        FixedStepStart whole = FixedStepStart.run(warm, 1e-3);
        double closing = result.closingTime().orElseThrow();
        assertTrue(closing > result.fillTime().orElseThrow() + 10);
        // one step late at the valve, up to one at the end of the fill stage
        ExternalCheck.of(Topic.START, "time of closing against steps of 1 ms", "steps of fixed length, derived here")
                .expected(closing, "s")
                .computed(whole.closingTime().orElseThrow())
                .within(2e-3, "one step late at the valve, up to one at the end of the fill stage");
        ExternalCheck.of(Topic.START, "time of closing against steps of 0.5 ms", "steps of fixed length, derived here")
                .expected(closing, "s")
                .computed(half.closingTime().orElseThrow())
                .within(1e-3, "one step late at the valve, up to one at the end of the fill stage");
        assertEquals(1, result.events(Kind.GALLERY_FILLED).size());
    }

    @Test
    void colderStartsStayOpenLongerAndTheSweepAgreesWithSingleRuns() {
        StartUpSpec spec = spec(90e3, 300, StartUpSpec.USUAL_TOLERANCE);
        StartUpSpec loaded = spec.withFilter(spec.filter().withElementResistance(4e9));
        double[] temperatures = {245, 250, 255, 260, 265, 270, 275, 280};
        List<StartSweep.Row> rows = StartSweep.of(loaded, temperatures).rows();
        for (int i = 0; i < rows.size(); i++) {
            StartSweep.Row row = rows.get(i);
            BypassTally alone =
                    StartUp.run(loaded.coldSoakedAt(temperatures[i])).connected();
            assertEquals(alone, row.connected());
            if (i > 0) {
                double seconds = row.fill().plus(row.connected()).openSeconds();
                double before =
                        rows.get(i - 1).fill().plus(rows.get(i - 1).connected()).openSeconds();
                assertTrue(seconds <= before + 1e-6, "from " + temperatures[i] + " K: " + seconds + " s");
            }
        }
        assertTrue(
                rows.get(0).connected().openSeconds() > rows.get(7).connected().openSeconds() + 10);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.START, quantity, SOURCE);
    }
}
