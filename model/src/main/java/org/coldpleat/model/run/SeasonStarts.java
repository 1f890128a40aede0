package org.coldpleat.model.run;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.coldstart.TemperatureTrace;
import org.coldpleat.model.coldstart.ThermalModel;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.loading.ServicePlan;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Cold starts of a candidate from the seasons' temperatures, reduced to lines over the logarithm of the pack's resistance
 * ratio; full starts are run at the ends of the cells that are asked for. Work object of one thread.
 */
@Source("linear interpolation between full starts; warm-up taken as exponential, from a stated time")
@Validity("oil warms up as stated whatever the filter does; one engine state while it does")
final class SeasonStarts implements ServicePlan.StartDuty {
    /** Step in the logarithm of the ratio [1]. */
    private static final double STEP = 0.15;

    /** Tolerance of a start's temperatures [K]. */
    private static final double TOLERANCE = 1e-3;

    private static final int TRACE_POINTS = 25;

    /** Time constants in the warm-up time: 95 % of the way [1]. */
    private static final double TIME_CONSTANTS = 3;

    private final EngineCircuit circuit;
    private final FilterAssembly filter;
    private final double speed;
    private final DutyCycle.Starts starts;
    private final double hot;
    private final Map<Double, Map<Long, ServicePlan.StartDose>> known = new HashMap<>();
    private int unsolved;

    SeasonStarts(DutyModel model, double speed, DutyCycle.Starts starts, double hot) {
        circuit = model.circuit().orElseThrow();
        filter = model.filter();
        this.speed = speed;
        this.starts = starts;
        this.hot = hot;
    }

    @Override
    public ServicePlan.StartDose at(double temperature, double packRatio) {
        Map<Long, ServicePlan.StartDose> nodes = known.computeIfAbsent(temperature, t -> new HashMap<>());
        double place = Math.log(packRatio) / STEP;
        long below = (long) Math.floor(place);
        double u = place - below;
        ServicePlan.StartDose low = node(nodes, temperature, below);
        ServicePlan.StartDose high = node(nodes, temperature, below + 1);
        return new ServicePlan.StartDose(
                low.unfilteredVolume() + u * (high.unfilteredVolume() - low.unfilteredVolume()),
                low.filteredVolume() + u * (high.filteredVolume() - low.filteredVolume()));
    }

    private ServicePlan.StartDose node(Map<Long, ServicePlan.StartDose> nodes, double temperature, long number) {
        return nodes.computeIfAbsent(number, n -> full(temperature, Math.exp(n * STEP)));
    }

    /** A full start. */
    ServicePlan.StartDose full(double temperature, double packRatio) {
        StartUpResult result = run(temperature, packRatio);
        if (!result.status().isAnswer()) {
            unsolved++;
            return new ServicePlan.StartDose(0, 0);
        }
        BypassTally total = result.total();
        return new ServicePlan.StartDose(total.unfilteredVolume(), total.filteredVolume());
    }

    private StartUpResult run(double temperature, double packRatio) {
        double[] times = new double[TRACE_POINTS];
        double[] warming = new double[TRACE_POINTS];
        for (int i = 0; i < TRACE_POINTS; i++) {
            double share = (double) i / (TRACE_POINTS - 1);
            times[i] = share * starts.warmUp();
            warming[i] = hot - (hot - temperature) * Math.exp(-TIME_CONSTANTS * share);
        }
        return StartUp.run(new StartUpSpec(
                circuit,
                filter.withElementResistance(packRatio * filter.elementResistance()),
                ThermalModel.twoMass(1, 1, 0, 0, 0, temperature),
                Optional.of(new TemperatureTrace(times, warming)),
                StartSchedule.steady(speed, 0, 0),
                temperature,
                starts.galleryVolume(),
                hot,
                starts.warmUp(),
                TOLERANCE));
    }

    /** Full starts without an answer, counted as without flow. */
    int unsolved() {
        return unsolved;
    }

    /**
     * Greatest difference between line and full start in the middle of the cells asked for so far, over the volume of
     * the start [1]; at most a number of cells is looked at.
     */
    double statedError(int mostCells) {
        double worst = 0;
        int looked = 0;
        for (Map.Entry<Double, Map<Long, ServicePlan.StartDose>> entry :
                Map.copyOf(known).entrySet()) {
            for (long number : entry.getValue().keySet().stream().sorted().toList()) {
                if (!entry.getValue().containsKey(number + 1) || looked >= mostCells) {
                    continue;
                }
                double ratio = Math.exp((number + 0.5) * STEP);
                ServicePlan.StartDose full = full(entry.getKey(), ratio);
                ServicePlan.StartDose line = at(entry.getKey(), ratio);
                double volume = full.unfilteredVolume() + full.filteredVolume();
                double off = Math.abs(full.unfilteredVolume() - line.unfilteredVolume());
                worst = volume > 0 ? Math.max(worst, off / volume) : worst;
                looked++;
            }
        }
        return worst;
    }
}
