package org.coldpleat.validation.benchmark;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A whole comparison: the first one after the start of the machine, and one when warmed up. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CompareBenchmark {
    /** Case file, from the folder in which the benchmark is started. */
    @Param("demo-cases/ridge-hut-generator/case.yaml")
    public String caseFile;

    private ResolvedCase resolved;

    @Setup
    public void read() {
        resolved = Simulation.resolve(
                        CaseReader.read(Path.of(caseFile)).document().orElseThrow())
                .resolved()
                .orElseThrow();
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(5)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public Comparison first() {
        return Simulation.compare(resolved).now();
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Fork(1)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 3, time = 1)
    public Comparison warm() {
        return Simulation.compare(resolved).now();
    }
}
