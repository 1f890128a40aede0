package org.coldpleat.validation.benchmark;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.coldstart.FixedStepStart;
import org.coldpleat.model.coldstart.StartPhase;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.model.valve.SpringValve;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of a start-up of half an hour, on steps of its own choice and on fixed steps of 50 ms (valve times then hold within
 * 50 ms, against about 1 ms). Invented engine and filter.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StartUpBenchmark {
    private final StartUpSpec spec = spec();

    /** The start that is measured. */
    static StartUpSpec spec() {
        SpringValve valve = new SpringValve(
                100e3, 11e-3, 1200, 3e-3, 1, SpringValve.CURTAIN_DISCHARGE, AdditiveLaw.NONE, 1e-16, 0, 90e3);
        FilterAssembly filter = new FilterAssembly(
                        Openings.hole(5e-3, 3e-3, Openings.SHORT_TUBE).parallelOf(6),
                        AdditiveLaw.NONE,
                        Passages.annulus(32.5e-3, 31e-3, 70e-3).laminar(),
                        2e9,
                        Openings.slot(0.8e-3, 12e-3, 0.6e-3, Openings.SHARP_EDGE)
                                .parallelOf(40),
                        Passages.collectingTube(14e-3, 70e-3),
                        Openings.hole(14e-3, 25e-3, Openings.SHORT_TUBE),
                        Optional.empty(),
                        BypassLocation.NONE,
                        Optional.empty())
                .withBypass(BypassLocation.BASE, valve);
        EngineCircuit engine = new EngineCircuit(
                Pump.unlimited(3e-6, 2e-12),
                List.of(Relief.linear(Relief.Sensing.PUMP_OUTLET, 400e3, 2e8)),
                AdditiveLaw.NONE,
                new Gallery(
                        1e8,
                        new Bearings(5e-12, 2e-8, 0.3, 5, 0.5),
                        List.of(new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0))),
                new InventedOil(90, 13.5));
        StartSchedule schedule = new StartSchedule(List.of(
                new StartPhase(2, 4, 0, 0), new StartPhase(60, 20, 3000, 200), StartPhase.endless(50, 4500, 500)));
        return new StartUpSpec(
                engine,
                filter,
                new ThermalModel(1.5, 15e3, 0.2e-3, 150, 0, 40, 3, 50, 250),
                Optional.empty(),
                schedule,
                250,
                0.15e-3,
                333,
                1800,
                StartUpSpec.USUAL_TOLERANCE);
    }

    /** Steps of its own choice, events located. */
    @Benchmark
    public StartUpResult ownSteps() {
        return StartUp.run(spec);
    }

    /** The same equations on fixed steps. */
    @Benchmark
    public FixedStepStart fixedSteps() {
        return FixedStepStart.run(spec, 0.05);
    }
}
