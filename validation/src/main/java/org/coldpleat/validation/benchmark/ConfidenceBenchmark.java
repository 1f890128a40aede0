package org.coldpleat.validation.benchmark;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.coldpleat.model.certainty.CaseConfidence;
import org.coldpleat.model.certainty.CaseDraws;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Draws of a case with three candidates in three states: the whole run, and one opening temperature of one draw, with its
 * share of what the draw costs anyway, once led by the unmoved curve and once looked for over the whole range without any
 * start. The ratio of the last two does not depend on the machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 4, time = 3)
public class ConfidenceBenchmark {
    /** Candidates times states of the case [1]. */
    private static final int OPENINGS = 9;

    /** Case file, from the folder in which the benchmark is started. */
    @Param("demo-cases/clinic-van/case.yaml")
    public String caseFile;

    private ResolvedCase resolved;
    private CaseDraws draws;
    private Map<String, Double> moved;

    @Setup
    public void read() {
        resolved = Simulation.resolve(
                        CaseReader.read(Path.of(caseFile)).document().orElseThrow())
                .resolved()
                .orElseThrow();
        if (resolved.candidateNames().size() * resolved.stateNames().size() != OPENINGS) {
            throw new IllegalStateException("candidates times states of " + caseFile + " are not " + OPENINGS);
        }
        draws = new CaseDraws(resolved);
        moved = new HashMap<>();
    }

    /** Every unknown moved by half a standard uncertainty, up and down in turn. */
    @Setup(Level.Iteration)
    public void move() {
        double deviations = 0.5;
        for (Unknown unknown : draws.unknowns()) {
            moved.put(unknown.path(), unknown.moved(unknown.upwardOnly() ? Math.abs(deviations) : deviations));
            deviations = -deviations;
        }
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public ConfidenceResult whole4096Draws() {
        return CaseConfidence.run(resolved, 4096, 1, Progress.NONE).orElseThrow();
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @OperationsPerInvocation(OPENINGS)
    public double openingGuided() {
        return openings(false);
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @OperationsPerInvocation(OPENINGS)
    public double openingByFullSearch() {
        return openings(true);
    }

    private double openings(boolean full) {
        double sum = 0;
        CaseDraws.Common common = draws.common(moved).orElseThrow();
        for (int i = 0; i < resolved.candidateNames().size(); i++) {
            CaseDraws.Own own = common.candidate(i, moved).orElseThrow();
            for (int s = 0; s < resolved.stateNames().size(); s++) {
                sum += full ? own.openingByFullSearch(s) : own.opening(s);
            }
        }
        return sum;
    }
}
