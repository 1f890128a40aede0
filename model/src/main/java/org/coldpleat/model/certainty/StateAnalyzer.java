package org.coldpleat.model.certainty;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.CurveTracer;
import org.coldpleat.model.steady.OpenTemperatures;
import org.coldpleat.model.steady.OpeningFinder;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateCurve;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.steady.StateSolver;
import org.coldpleat.shared.source.Source;

/** Finds openings, shares, curve and bands of one candidate in one operating state. */
public final class StateAnalyzer {
    private static final double SLOPE_STEP = 0.05;
    private static final double SMALLEST_RATIO = 1e-12;

    /** Standard uncertainties beyond which a valve counts as shut whatever is not known [1]. */
    private static final double FAR = 5;

    private final ResolvedCase resolved;
    private final Variants variants;
    private final int position;
    private final OperatingState operatingState;
    private final StateModel model;
    private Optional<OperatingPoint> last = Optional.empty();
    private double starvedUpTo = Double.NaN;
    private double suctionLimitedUpTo = Double.NaN;

    public StateAnalyzer(ResolvedCase resolved, Variants variants, int position, OperatingState operatingState) {
        this.resolved = resolved;
        this.variants = variants;
        this.position = position;
        this.operatingState = operatingState;
        model = new StateModel(
                resolved.shared(), resolved.candidates().get(position).filter(), operatingState);
    }

    public StateAnalysis analyze() {
        StateCurve curve = curve();
        if (!model.hasValve()) {
            return withoutValve(curve);
        }
        StateSolver heldShut = model.heldShutSolver();
        last.ifPresent(heldShut::startAt);
        OpenTemperatures openings =
                OpeningFinder.over(resolved.from(), resolved.to()).find(heldShut::ratioAt);
        StateResult.Answer answer = answer(openings);
        double reference = answer == StateResult.Answer.BELOW ? openings.warmestOpen() : openings.greatestAt();
        double coldestAt = resolved.coldestNamed();
        List<Map<String, Double>> changes = variants.contributions(position, operatingState, 2, moved ->
                new double[] {logRatio(moved, reference), logRatio(moved, coldestAt)});
        double logSlope =
                (logRatio(model, reference + SLOPE_STEP) - logRatio(model, reference - SLOPE_STEP)) / (2 * SLOPE_STEP);
        double logRatio = Math.log(Math.max(SMALLEST_RATIO, openings.greatestRatio()));
        double sigma = Variants.norm(changes.get(0));
        List<StateResult.ShareAt> shares = shares(sigma);
        StateResult result = new StateResult(
                operatingState.setting(),
                operatingState.name(),
                answer,
                openings.intervals().stream()
                        .map(interval -> new double[] {interval.low(), interval.high()})
                        .toList(),
                answer == StateResult.Answer.BELOW ? Optional.of(band(reference, sigma)) : Optional.empty(),
                new Band(openings.greatestRatio(), openings.greatestRatio() * sigma),
                openings.greatestAt(),
                fixedFlowOpening(),
                Chance.above(logRatio, sigma),
                shares,
                curve);
        return new StateAnalysis(
                position,
                operatingState,
                model,
                result,
                reference,
                answer == StateResult.Answer.BELOW ? 0 : logRatio,
                logSlope,
                changes.get(0),
                starvedUpTo,
                suctionLimitedUpTo,
                logRatio(model, coldestAt),
                changes.get(1));
    }

    private StateAnalysis withoutValve(StateCurve curve) {
        StateResult result = new StateResult(
                operatingState.setting(),
                operatingState.name(),
                StateResult.Answer.NO_VALVE,
                List.of(),
                Optional.empty(),
                Band.exact(0),
                resolved.from(),
                Double.NaN,
                0,
                resolved.named().stream().map(named -> share(named, 0)).toList(),
                curve);
        return new StateAnalysis(
                position,
                operatingState,
                model,
                result,
                resolved.from(),
                Double.NEGATIVE_INFINITY,
                0,
                Map.of(),
                starvedUpTo,
                suctionLimitedUpTo,
                0,
                Map.of());
    }

    private static StateResult.Answer answer(OpenTemperatures openings) {
        if (openings.unresolved() > 0) {
            return StateResult.Answer.UNRESOLVED;
        }
        return switch (openings.kind()) {
            case NEVER -> StateResult.Answer.NEVER;
            case ALWAYS -> StateResult.Answer.ALWAYS;
            case BELOW -> StateResult.Answer.BELOW;
            case INTERVALS -> StateResult.Answer.INTERVALS;
            case UNKNOWN -> StateResult.Answer.UNRESOLVED;
        };
    }

    private double logRatio(StateModel moved, double temperature) {
        StateSolver solver = moved.heldShutSolver();
        last.ifPresent(solver::startAt);
        return Math.log(Math.max(SMALLEST_RATIO, solver.ratioAt(temperature)));
    }

    /** Bypass shares at the named temperatures; where no unknown can open the valve, their band has no width. */
    private List<StateResult.ShareAt> shares(double sigma) {
        double[] maybeOpen = resolved.named().stream()
                .mapToDouble(NamedTemperature::temperature)
                .filter(at -> logRatio(model, at) + FAR * sigma > 0)
                .toArray();
        List<Map<String, Double>> changes = maybeOpen.length == 0
                ? List.of()
                : variants.contributions(position, operatingState, maybeOpen.length, moved -> {
                    StateSolver solver = moved.solver();
                    last.ifPresent(solver::startAt);
                    return Arrays.stream(maybeOpen)
                            .map(at -> shareAt(solver, at))
                            .toArray();
                });
        List<StateResult.ShareAt> shares = new ArrayList<>();
        for (NamedTemperature named : resolved.named()) {
            double spread = 0;
            for (int i = 0; i < maybeOpen.length; i++) {
                if (maybeOpen[i] == named.temperature()) {
                    spread = Variants.norm(changes.get(i));
                }
            }
            shares.add(share(named, spread));
        }
        return shares;
    }

    private static double shareAt(StateSolver solver, double temperature) {
        solver.at(temperature);
        return solver.bypassShare();
    }

    private StateResult.ShareAt share(NamedTemperature named, double spread) {
        SolvedPoint point = model.at(named.temperature(), last);
        return new StateResult.ShareAt(
                named.name(),
                named.temperature(),
                new Band(point.filter().bypassShare(), spread),
                point.filter().totalDrop(),
                point.status());
    }

    private StateCurve curve() {
        CurveTracer.Traced traced = CurveTracer.trace(model, resolved.from(), resolved.to());
        last = traced.last();
        starvedUpTo = traced.starvedUpTo();
        suctionLimitedUpTo = traced.suctionLimitedUpTo();
        return traced.curve();
    }

    /**
     * The band of an opening temperature: where the log ratio is within 1.96 standard uncertainties of 0. The ratio, not
     * the temperature, is what the unknowns move evenly; where the curve flattens in the cold, the band runs out of it.
     */
    @Source("derived here: first-order propagation of ln(ratio), carried to temperature along the curve")
    private OpeningBand band(double opening, double sigma) {
        double reach = COVERAGE_95 * sigma;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        double step = (resolved.to() - resolved.from()) / (CurveTracer.POINTS - 1);
        double before = 0;
        for (double at = opening; at <= resolved.to() + step; at += step) {
            double value = at == opening ? 0 : logRatio(model, Math.min(at, resolved.to()));
            if (value <= -reach) {
                high = at - step * (value == before ? 0 : (value + reach) / (value - before));
                break;
            }
            before = value;
        }
        before = 0;
        for (double at = opening; at >= resolved.from() - step; at -= step) {
            double value = at == opening ? 0 : logRatio(model, Math.max(at, resolved.from()));
            if (value >= reach) {
                low = at + step * (value == before ? 0 : (value - reach) / (value - before));
                break;
            }
            before = value;
        }
        if (reach == 0) {
            return new OpeningBand(opening, opening, opening);
        }
        return new OpeningBand(opening, low, high);
    }

    /** What pump displacement times cold resistance would predict. */
    private double fixedFlowOpening() {
        if (!operatingState.isEngine()) {
            return Double.NaN;
        }
        EngineModel engine = resolved.shared().engine().orElseThrow();
        double flow = engine.pump().displacement() * operatingState.drive() * engine.pumpTurns();
        OpenTemperatures naive =
                OpeningFinder.over(resolved.from(), resolved.to()).find(at -> model.ratioAtFlow(flow, at));
        return naive.kind() == OpenTemperatures.Kind.BELOW ? naive.warmestOpen() : Double.NaN;
    }
}
