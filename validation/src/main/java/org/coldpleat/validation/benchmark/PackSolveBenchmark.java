package org.coldpleat.validation.benchmark;

import java.util.concurrent.TimeUnit;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one pack solve with the default cells; aim: below 50 microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class PackSolveBenchmark {
    private final PleatPack pack =
            new PleatPack(PleatGeometry.radial(35e-3, 20e-3, 60, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED), 60, 60e-3);

    /** One solve of a round pack with a uniform medium. */
    @Benchmark
    public double radialPack() {
        return pack.resistance(2.7e7);
    }
}
