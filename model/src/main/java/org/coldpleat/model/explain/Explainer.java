package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.OpenTemperatures;
import org.coldpleat.model.steady.OpeningFinder;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chain behind a number of one candidate in one operating state, down to what was read off the bench. */
public final class Explainer {
    static final String OPENING = "openingTemperature";
    static final String HOT_DROP = "hotPressureDrop";
    static final String RESISTANCE = "mediumResistance";
    static final String AREA = "mediumArea";
    static final String CHANNELS = "channelFactor";
    static final String RATIO = "resistanceRatio";
    static final String SHARE = "bypassShare";
    static final String CHANCE = "chanceOpen";
    public static final List<String> QUANTITIES = List.of(
            OPENING,
            SHARE,
            CHANCE,
            HOT_DROP,
            RESISTANCE,
            AREA,
            CHANNELS,
            RATIO,
            StartExplainer.SECONDS_OPEN,
            StartExplainer.UNFILTERED,
            ServiceExplainer.HOURS,
            ServiceExplainer.WINTER_HOURS);

    /** Those that belong to one oil temperature. */
    public static final List<String> AT_TEMPERATURE = List.of(SHARE, HOT_DROP, RATIO);

    private final ResolvedCase resolved;
    private final int position;
    private final OperatingState operatingState;
    private final StateModel model;
    private final PointExplainer points;

    private Explainer(ResolvedCase resolved, int position, OperatingState operatingState) {
        this.resolved = resolved;
        this.position = position;
        this.operatingState = operatingState;
        model = new StateModel(
                resolved.shared(), resolved.candidates().get(position).filter(), operatingState);
        points = new PointExplainer(resolved, position, operatingState, model);
    }

    public static Explanation explain(ResolvedCase resolved, OperatingState operatingState, ExplainRequest request) {
        String quantity = request.quantity().orElse(OPENING);
        if (request.temperature().isPresent() && !AT_TEMPERATURE.contains(quantity)) {
            throw new IllegalArgumentException(
                    "only " + AT_TEMPERATURE + " belong to an oil temperature, not " + quantity);
        }
        int position = resolved.requirePosition(request.candidate());
        Explainer explainer = new Explainer(resolved, position, operatingState);
        double cold = request.temperature().orElse(resolved.coldestNamed());
        return switch (quantity) {
            case OPENING -> explainer.opening();
            case SHARE -> explainer.bypass().share(cold);
            case CHANCE -> explainer.bypass().chance();
            case HOT_DROP ->
                explainer.points.drop(HOT_DROP, request.temperature().orElse(resolved.warmestNamed()));
            case RESISTANCE -> explainer.points.medium().resistance();
            case AREA -> explainer.points.medium().area();
            case CHANNELS -> explainer.points.medium().channels();
            case StartExplainer.SECONDS_OPEN -> StartExplainer.secondsOpen(resolved, position);
            case StartExplainer.UNFILTERED -> StartExplainer.unfiltered(resolved, position);
            case ServiceExplainer.HOURS -> ServiceExplainer.hours(resolved, position);
            case ServiceExplainer.WINTER_HOURS -> ServiceExplainer.winterHours(resolved, position);
            case RATIO -> explainer.ratio(cold);
            default -> throw new IllegalArgumentException("no quantity " + quantity + " in " + QUANTITIES);
        };
    }

    private BypassExplainer bypass() {
        return new BypassExplainer(resolved, position, operatingState, model, points);
    }

    private Explanation ratio(double at) {
        return new RatioExplainer(resolved, operatingState, model).ratio(at);
    }

    private Explanation opening() {
        if (!model.hasValve()) {
            return ChainEnds.link(
                    "noValve", Kind.TEMPERATURE, Double.NaN, List.of(points.drop("coldDrop", resolved.from())));
        }
        OpenTemperatures openings =
                OpeningFinder.over(resolved.from(), resolved.to()).find(model.heldShutSolver()::ratioAt);
        boolean opens = openings.kind() == OpenTemperatures.Kind.BELOW;
        double at = opens ? openings.warmestOpen() : openings.greatestAt();
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(points.valveRatio(at));
        if (operatingState.isEngine()) {
            inputs.add(ratio(at));
        }
        return new Explanation(
                opens ? OPENING : "greatestRatioTemperature",
                resolved.candidates().get(position).name() + ", " + operatingState.name(),
                Kind.TEMPERATURE,
                at,
                inputs);
    }
}
