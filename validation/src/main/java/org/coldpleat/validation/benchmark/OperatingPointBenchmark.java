package org.coldpleat.validation.benchmark;

import java.util.concurrent.TimeUnit;
import org.coldpleat.model.steady.OpeningFinder;
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
 * Time of one operating point and of one opening temperature, by the model and by nested Brent solvers. Temperatures
 * change from call to call.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OperatingPointBenchmark {
    private final FilterOnEngine engine = BenchmarkEngine.engine();
    private final OpeningFinder.Ratio following = engine.ratioAt(BenchmarkEngine.SPEED);
    private int call;

    private double nextTemperature() {
        call = BenchmarkEngine.next(call);
        return BenchmarkEngine.temperature(call);
    }

    /** Model, one operating point with the inner state of the filter, no warm start. */
    @Benchmark
    public FilterOnEngine.State operatingPoint() {
        return engine.solve(BenchmarkEngine.SPEED, nextTemperature());
    }

    /** Model, one operating point read for its valve ratio alone, from where the last one ended. */
    @Benchmark
    public double operatingPointFollowed() {
        return following.at(nextTemperature());
    }

    /** The same job by nested Brent solvers. */
    @Benchmark
    public NestedBrent.Answer operatingPointByNestedBrent() {
        return nested(NestedBrent.Library.COMMONS_MATH, nextTemperature());
    }

    /** The same job by the bracketing solver of the library that the model stands on. */
    @Benchmark
    public NestedBrent.Answer operatingPointByHipparchus() {
        return nested(NestedBrent.Library.HIPPARCHUS, nextTemperature());
    }

    /** Model, all openings from -40 to 150 C. */
    @Benchmark
    public Object openingTemperature() {
        return OpeningFinder.overOilRange().find(engine.ratioAt(BenchmarkEngine.SPEED));
    }

    /** The same search fed by nested Brent solvers. */
    @Benchmark
    public Object openingTemperatureByNestedBrent() {
        return OpeningFinder.overOilRange()
                .find(t -> nested(NestedBrent.Library.COMMONS_MATH, t).valveDifference()
                        / BenchmarkEngine.OPENING_PRESSURE);
    }

    private NestedBrent.Answer nested(NestedBrent.Library library, double temperature) {
        return new NestedBrent(library, engine.circuit(), engine.filter(), BenchmarkEngine.SPEED, temperature).solve();
    }
}
