package org.coldpleat.model.loading.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.DirtSource;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.steady.StateSolver;

/** One candidate in the service of its case: flows for any load, and the plan to integrate. Work object of one thread. */
public final class ServiceModel {
    /** Size classes of the dirt [1]. */
    static final int CLASSES = 40;

    /** Width to which the logarithm of a resistance ratio is closed in [1]. */
    private static final BracketedRoot.Stop CLOSE = BracketedRoot.Stop.atWidth(1e-13);

    private final ResolvedCase resolved;
    private final BuiltCandidate candidate;
    private final DutyCycle cycle;
    private final Optional<SeasonStarts> starts;

    public ServiceModel(ResolvedCase resolved, int position, DutyCycle cycle) {
        this.resolved = resolved;
        this.cycle = cycle;
        candidate = resolved.candidates().get(position);
        starts = cycle.starts().map(one -> new SeasonStarts(resolved, position, one, cycle.oilTemperature()));
    }

    /** The candidate in a state with a pack that resists so many times its clean value. */
    public StateModel loaded(OperatingState operatingState, double packRatio) {
        double resistance = packRatio * candidate.filter().elementResistance();
        return new StateModel(resolved.shared(), candidate.filter().withElementResistance(resistance), operatingState);
    }

    /** Drop over the filter in hot running with a loaded pack [Pa]. */
    public double hotDrop(double packRatio) {
        return hotSolver(packRatio).totalDrop();
    }

    private StateSolver hotSolver(double packRatio) {
        StateSolver solver = loaded(cycle.running(), packRatio).solver();
        solver.at(cycle.oilTemperature());
        return solver;
    }

    /** Hot running with a loaded pack. */
    public SolvedPoint hot(double packRatio) {
        return hotSolver(packRatio).point();
    }

    /** Pack ratio [1] at which the bypass valve opens in a state; none if not up to the limit of the element. */
    public OptionalDouble openingRatio(OperatingState operatingState, double temperature) {
        if (!loaded(operatingState, 1).hasValve()) {
            return OptionalDouble.empty();
        }
        double clean = valveRatio(operatingState, temperature, 1);
        if (clean >= 1) {
            return OptionalDouble.of(1);
        }
        double worn = valveRatio(operatingState, temperature, ServiceLife.ELEMENT_LIMIT);
        if (!(worn > 1)) {
            return OptionalDouble.empty();
        }
        double root = BracketedRoot.illinois(
                log -> valveRatio(operatingState, temperature, Math.exp(log)) - 1,
                0,
                clean - 1,
                Math.log(ServiceLife.ELEMENT_LIMIT),
                worn - 1,
                CLOSE);
        return OptionalDouble.of(Math.exp(root));
    }

    /** Difference across the shut valve over its opening pressure [1]. */
    public double valveRatio(OperatingState operatingState, double temperature, double packRatio) {
        StateModel model = loaded(operatingState, packRatio);
        return model.heldShutSolver().ratioAt(temperature);
    }

    public SizeClasses classes() {
        return cycle.sizes().classes(CLASSES);
    }

    public Optional<SeasonStarts> starts() {
        return starts;
    }

    /** What is to be integrated. */
    public ServicePlan plan(BlockingLaw law, CaptureCurve capture, OptionalDouble hotOpening) {
        SizeClasses classes = classes();
        double[] efficiency = capture.efficiencies(classes);
        double[] source = new DirtSource(cycle.dirtRate(), cycle.sizes()).rates(classes);
        return new ServicePlan(
                classes,
                efficiency,
                source,
                cycle.sumpVolume(),
                cycle.oilLife(),
                cycle.topUp(),
                candidate.packModel(),
                candidate.mediumResistance(),
                law,
                new RatioCurve(this::hotState, hotOpening.orElse(1), RatioCurve.USUAL_STEP),
                starts.map(ServicePlan.StartDuty.class::cast)
                        .orElse((temperature, ratio) -> new ServicePlan.StartDose(0, 0)),
                cycle.starts().map(one -> one.warming().duration()).orElse(0.0),
                cycle.starts().map(one -> one.hotSeconds().clone()).orElse(new double[] {cycle.hotSecondsPerWeek()}),
                cycle.starts().map(one -> one.temperatures().clone()).orElse(new double[0]),
                cycle.horizon());
    }

    private ServicePlan.HotState hotState(double packRatio) {
        StateSolver solver = hotSolver(packRatio);
        return new ServicePlan.HotState(solver.totalFlow(), solver.bypassShare(), solver.totalDrop());
    }
}
