package org.coldpleat.validation.benchmark;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.model.loading.service.DoseCurve;
import org.coldpleat.model.loading.service.RatioCurve;
import org.coldpleat.model.loading.service.ServiceCourse;
import org.coldpleat.model.loading.service.ServiceLife;
import org.coldpleat.model.loading.service.ServicePlan;
import org.coldpleat.model.pleat.PackResult;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
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
 * Time of a service life of 500 h with a start every 10 h from one of three temperatures, on steps of its own choice and on
 * fixed steps of 15 min; aim: median below 100 ms. The table of the hot duty and the curves of the starts, half an hour each
 * in three masses, are made in each run. Invented engine and filter.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ServiceLifeBenchmark {
    private static final double HOUR = 3600;
    private static final double MEDIUM = 1.5e8;

    private final PleatPack pack =
            new PleatPack(PleatGeometry.radial(33e-3, 17e-3, 53, 0.7e-3, 0, 0, 0, PleatEnds.FOLDED), 53, 57e-3);
    private final PackResult clean = pack.solve(MEDIUM);
    private final FilterAssembly filter = FilterAssembly.ofPack(clean.resistance())
            .withBypass(
                    BypassLocation.BASE,
                    new SpringValve(
                            100e3,
                            11e-3,
                            1200,
                            3e-3,
                            1,
                            SpringValve.CURTAIN_DISCHARGE,
                            AdditiveLaw.NONE,
                            1e-16,
                            0,
                            90e3));
    private final EngineCircuit engine = new EngineCircuit(
            Pump.unlimited(3e-6, 2e-12),
            List.of(Relief.linear(Relief.Sensing.PUMP_OUTLET, 400e3, 2e8)),
            AdditiveLaw.NONE,
            new Gallery(
                    1e8,
                    new Bearings(5e-12, 2e-8, 0.3, 5, 0.5),
                    List.of(new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0))),
            new InventedOil(90, 13.5));
    private final StartUpSpec start = new StartUpSpec(
            engine,
            filter,
            new ThermalModel(1.5, 15e3, 0.2e-3, 150, 0, 40, 3, 50, 250),
            Optional.empty(),
            StartSchedule.steady(30, 4000, 300),
            250,
            0.15e-3,
            333,
            1800,
            1e-3);

    private ServicePlan.StartDose start(double temperature, double ratio) {
        BypassTally total = StartUp.run(start.coldSoakedAt(temperature)
                        .withFilter(filter.withElementResistance(ratio * clean.resistance())))
                .total();
        return new ServicePlan.StartDose(total.unfilteredVolume(), total.filteredVolume());
    }

    private ServicePlan plan() {
        Map<Double, DoseCurve> curves = new HashMap<>();
        SizeClasses classes = TestDust.A3.sizes().classes(20);
        var capture = CaptureFamily.LOG_NORMAL.through(new RatingPair(12e-6, 0.5), new RatingPair(25e-6, 0.987));
        double[] efficiency = new double[classes.count()];
        double[] source = TestDust.A3.sizes().shares(classes);
        for (int i = 0; i < efficiency.length; i++) {
            efficiency[i] = capture.efficiency(classes.middle(i));
            source[i] *= 7e-9;
        }
        return new ServicePlan(
                classes,
                efficiency,
                source,
                3.6e-3,
                200 * HOUR,
                1e-9,
                pack,
                MEDIUM,
                new BlockingLaw(1, 20),
                new RatioCurve(this::hot, 6, RatioCurve.USUAL_STEP),
                (temperature, ratio) -> curves.computeIfAbsent(temperature, t -> new DoseCurve(r -> start(t, r), 2e-3))
                        .at(ratio),
                900,
                new double[] {9.75 * HOUR, 9.75 * HOUR, 9.75 * HOUR, 9.75 * HOUR},
                new double[] {255, 275, 295, 275},
                500 * HOUR);
    }

    private ServicePlan.HotState hot(double ratio) {
        FilterOnEngine loaded = FilterOnEngine.mount(filter.withElementResistance(ratio * clean.resistance()), engine);
        var state = loaded.solve(50, 363).filter();
        return new ServicePlan.HotState(state.totalFlow(), state.bypassShare(), state.totalDrop());
    }

    /** Steps of its own choice. */
    @Benchmark
    public ServiceCourse ownSteps() {
        return ServiceLife.run(plan());
    }

    /** The same equations on fixed steps. */
    @Benchmark
    public ServiceCourse fixedSteps() {
        return ServiceLife.runWith(plan(), 1e9, 0.25 * HOUR);
    }
}
