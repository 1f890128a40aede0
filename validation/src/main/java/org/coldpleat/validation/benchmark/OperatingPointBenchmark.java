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
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.steady.OpeningFinder;
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
 * Time of one operating point and of one opening temperature, by the model and by nested Brent solvers. Invented engine and
 * filter; temperatures change from call to call.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OperatingPointBenchmark {
    private static final double SPEED = 18;

    private final FilterAssembly filter = new FilterAssembly(
                    Openings.hole(5e-3, 3e-3, Openings.SHORT_TUBE).parallelOf(6),
                    AdditiveLaw.NONE,
                    Passages.annulus(32e-3, 30.5e-3, 70e-3).laminar(),
                    6e9,
                    Openings.slot(0.8e-3, 12e-3, 0.6e-3, Openings.SHARP_EDGE).parallelOf(40),
                    Passages.collectingTube(30e-3, 70e-3),
                    Openings.hole(14e-3, 25e-3, Openings.SHORT_TUBE),
                    Optional.empty(),
                    BypassLocation.NONE,
                    Optional.empty())
            .withBypass(BypassLocation.DOME, SpringValve.disc(100e3, 11e-3, 1500, 3e-3, 1e-16));

    private final EngineCircuit circuit = new EngineCircuit(
            Pump.unlimited(7e-6, 2.5e-12),
            List.of(Relief.valve(Relief.Sensing.PUMP_OUTLET, 450e3, SpringValve.disc(450e3, 10e-3, 8000, 3e-3, 1e-17))),
            filter.law(),
            new Gallery(
                    2e8,
                    new Bearings(1 / 1e11, 2e-8, 0.3, 5, 0.5),
                    List.of(new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0))),
            new InventedOil(90, 13.5));

    private final FilterOnEngine engine = new FilterOnEngine(circuit, filter);
    private final OpeningFinder.Ratio following = engine.ratioAt(SPEED);
    private int call;

    private double nextTemperature() {
        call = (call + 7) % 97;
        return 243.15 + call;
    }

    /** Model, one operating point with the inner state of the filter, no warm start. */
    @Benchmark
    public FilterOnEngine.State operatingPoint() {
        return engine.solve(SPEED, nextTemperature());
    }

    /** Model, one operating point read for its valve ratio alone, from where the last one ended. */
    @Benchmark
    public double operatingPointFollowed() {
        return following.at(nextTemperature());
    }

    /** The same job by nested Brent solvers. */
    @Benchmark
    public NestedBrent.Answer operatingPointByNestedBrent() {
        return new NestedBrent(circuit, filter, SPEED, nextTemperature()).solve();
    }

    /** Model, all openings from -40 to 150 C. */
    @Benchmark
    public Object openingTemperature() {
        return OpeningFinder.overOilRange().find(engine.ratioAt(SPEED));
    }

    /** The same search fed by nested Brent solvers. */
    @Benchmark
    public Object openingTemperatureByNestedBrent() {
        return OpeningFinder.overOilRange()
                .find(t -> new NestedBrent(circuit, filter, SPEED, t).solve().valveDifference() / 100e3);
    }
}
