package org.coldpleat.validation.speed;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.coldpleat.validation.benchmark.NestedBrent;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs benchmarks, and looks at time and allocation. */
final class BenchmarkRun {
    private static final String PACKAGE = NestedBrent.class.getPackageName() + ".";
    private static final String ALLOCATED = "gc.alloc.rate.norm";

    private BenchmarkRun() {}

    /** Figures of benchmarks by their names, such as {@code PackSolveBenchmark.radialPack@C1}. */
    static Map<String, Figure> of(Collection<String> names, Effort effort) throws RunnerException {
        Map<String, Figure> figures = new HashMap<>();
        for (Compilers compilers : Compilers.values()) {
            String ending = "@" + compilers;
            List<String> here = names.stream()
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.substring(0, name.length() - ending.length()))
                    .toList();
            for (RunResult result : run(here, compilers, effort)) {
                String name = result.getParams().getBenchmark().substring(PACKAGE.length());
                figures.put(
                        name + ending,
                        new Figure(
                                result.getPrimaryResult().getScore() * 1e-9,
                                result.getSecondaryResults().get(ALLOCATED).getScore()));
            }
        }
        return figures;
    }

    private static Collection<RunResult> run(List<String> names, Compilers compilers, Effort effort)
            throws RunnerException {
        TimeValue each = TimeValue.milliseconds(effort.milliseconds);
        ChainedOptionsBuilder options = new OptionsBuilder()
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.NANOSECONDS)
                .forks(effort.forks)
                .warmupIterations(effort.warmUps)
                .warmupTime(each)
                .measurementIterations(effort.measurements)
                .measurementTime(each)
                .jvmArgsAppend(compilers.arguments().toArray(String[]::new))
                .addProfiler(GCProfiler.class)
                .shouldFailOnError(true);
        names.forEach(name -> options.include("^" + Pattern.quote(PACKAGE + name) + "$"));
        return new Runner(options.build()).run();
    }
}
