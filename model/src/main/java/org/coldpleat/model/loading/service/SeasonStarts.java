package org.coldpleat.model.loading.service;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.coldstart.plan.StartModel;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.thermal.TemperatureTrace;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Cold starts of a candidate from the temperatures of the year. Each temperature has a curve of full starts over the
 * resistance of the pack; engine, oil and air are soaked through at the start temperature. With a heat balance in the case
 * every start runs through its schedule, else the oil warms up in a stated time. Work object of one thread.
 */
@Source("full starts in time; without a heat balance the warm-up is taken as exponential, from a stated time")
@Validity("without a heat balance the oil warms up as stated whatever the filter does, in one engine state")
public final class SeasonStarts implements ServicePlan.StartDuty {
    /** Tolerance of a start's temperatures [K]; volumes hold within about 0.01 %. */
    private static final double TOLERANCE = 1e-3;

    /** Error of the lines between full starts, over all oil of a start [1]. */
    private static final double LINE_TOLERANCE = 2e-3;

    private static final int TRACE_POINTS = 25;

    /** Time constants in the warm-up time: 95 % of the way [1]. */
    private static final double TIME_CONSTANTS = 3;

    private final ResolvedCase resolved;
    private final int position;
    private final DutyCycle.Starts starts;
    private final double hot;
    private final Map<Double, StartUpSpec> clean = new HashMap<>();
    private final Map<Double, DoseCurve> curves = new HashMap<>();
    private int unsolved;

    SeasonStarts(ResolvedCase resolved, int position, DutyCycle.Starts starts, double hot) {
        this.resolved = resolved;
        this.position = position;
        this.starts = starts;
        this.hot = hot;
    }

    @Override
    public ServicePlan.StartDose at(double temperature, double packRatio) {
        return curves.computeIfAbsent(temperature, t -> new DoseCurve(ratio -> full(t, ratio), LINE_TOLERANCE))
                .at(packRatio);
    }

    private ServicePlan.StartDose full(double temperature, double packRatio) {
        return dose(run(clean.computeIfAbsent(temperature, this::spec), packRatio));
    }

    private ServicePlan.StartDose dose(StartUpResult result) {
        if (!result.status().isAnswer()) {
            unsolved++;
            return new ServicePlan.StartDose(0, 0);
        }
        BypassTally total = result.total();
        return new ServicePlan.StartDose(total.unfilteredVolume(), total.filteredVolume());
    }

    private static StartUpResult run(StartUpSpec spec, double packRatio) {
        FilterAssembly filter = spec.filter();
        return StartUp.run(spec.withFilter(filter.withElementResistance(packRatio * filter.elementResistance())));
    }

    private StartUpSpec spec(double temperature) {
        SharedModel shared = resolved.shared();
        BuiltCandidate candidate = resolved.candidates().get(position);
        Optional<StartPlan> plan = starts.warming().plan();
        if (plan.isPresent()) {
            StartModel soaked = plan.get().model().withTemperatures(temperature, temperature);
            return plan.get().spec(shared, candidate, position, soaked).withTolerance(TOLERANCE);
        }
        StateModel mounted = new StateModel(shared, candidate.filter(), starts.operatingState());
        EngineCircuit circuit = mounted.circuit().orElseThrow();
        double speed =
                starts.operatingState().drive() * shared.engine().orElseThrow().pumpTurns();
        double duration = starts.warming().duration();
        return new StartUpSpec(
                circuit,
                mounted.filter(),
                ThermalModel.twoMass(1, 1, 0, 0, 0, temperature),
                Optional.of(trace(temperature, duration)),
                StartSchedule.steady(speed, 0, 0),
                temperature,
                starts.warming().galleryVolume(),
                hot,
                duration,
                TOLERANCE);
    }

    private TemperatureTrace trace(double temperature, double duration) {
        double[] times = new double[TRACE_POINTS];
        double[] warming = new double[TRACE_POINTS];
        for (int i = 0; i < TRACE_POINTS; i++) {
            double share = (double) i / (TRACE_POINTS - 1);
            times[i] = share * duration;
            warming[i] = hot - (hot - temperature) * Math.exp(-TIME_CONSTANTS * share);
        }
        return new TemperatureTrace(times, warming);
    }

    /** Full starts without an answer, counted as without flow. */
    public int unsolved() {
        return unsolved;
    }

    /** Full starts made [1]. */
    int made() {
        return curves.values().stream().mapToInt(DoseCurve::starts).sum();
    }

    /**
     * Greatest difference found between what was used and a full start, in unfiltered over all oil of the start [1]: in
     * the middle of every cell of the curves, and from the coldest start of the year at the end of the life and at a
     * quarter, a half and three quarters of the way in the logarithm.
     */
    public double statedError(double lastRatio) {
        double lines = curves.values().stream()
                .mapToDouble(DoseCurve::statedError)
                .max()
                .orElse(0);
        double coldest = DoubleStream.of(starts.temperatures()).min().orElseThrow();
        double worst = lines;
        for (double part : new double[] {0.25, 0.5, 0.75, 1}) {
            double ratio = Math.pow(lastRatio, part);
            ServicePlan.StartDose exact = full(coldest, ratio);
            double volume = exact.unfilteredVolume() + exact.filteredVolume();
            double off = Math.abs(exact.unfilteredVolume() - at(coldest, ratio).unfilteredVolume());
            worst = volume > 0 ? Math.max(worst, off / volume) : worst;
        }
        return worst;
    }
}
