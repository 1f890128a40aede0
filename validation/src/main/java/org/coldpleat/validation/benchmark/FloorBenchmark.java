package org.coldpleat.validation.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.steady.OpeningFinder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of the laws alone, each looked at once at a known answer: the floor of what solves for the answer. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FloorBenchmark {
    private final List<PointLaws> points = new ArrayList<>();
    private final List<PointLaws> search = new ArrayList<>();
    private int looksOfStart;
    private int call;

    /** Solves what the laws are then looked at with. */
    @Setup
    public void solve() {
        FilterOnEngine engine = BenchmarkEngine.engine();
        for (int i = 0; i < BenchmarkEngine.TEMPERATURES; i++) {
            points.add(new PointLaws(engine, BenchmarkEngine.SPEED, BenchmarkEngine.temperature(i)));
        }
        OpeningFinder.Ratio ratio = engine.ratioAt(BenchmarkEngine.SPEED);
        OpeningFinder.overOilRange().find(temperature -> {
            search.add(new PointLaws(engine, BenchmarkEngine.SPEED, temperature));
            return ratio.at(temperature);
        });
        looksOfStart = StartUp.run(StartUpBenchmark.spec()).evaluations();
    }

    /** One operating point. */
    @Benchmark
    public double point() {
        call = BenchmarkEngine.next(call);
        return points.get(call).look();
    }

    /** A point either side of an opening temperature: the least that can show where it is. */
    @Benchmark
    public double twoPoints() {
        return point() + point();
    }

    /** Every point that the search over the whole range looks at. */
    @Benchmark
    public double search() {
        double sum = 0;
        for (PointLaws laws : search) {
            sum += laws.look();
        }
        return sum;
    }

    /** As many points as the integration of a start asks for. */
    @Benchmark
    public double start() {
        double sum = 0;
        for (int i = 0; i < looksOfStart; i++) {
            sum += point();
        }
        return sum;
    }
}
