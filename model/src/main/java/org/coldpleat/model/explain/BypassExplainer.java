package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateAnalyzer;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.filter.ValveState;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chains behind the share of oil that goes round the medium, and behind the chance that the valve opens. */
final class BypassExplainer {
    /** Unknowns that are told one by one. */
    private static final int TOLD = 8;

    private final ResolvedCase resolved;
    private final int position;
    private final OperatingState operatingState;
    private final StateModel model;
    private final PointExplainer points;
    private final Section sheet;

    BypassExplainer(
            ResolvedCase resolved,
            int position,
            OperatingState operatingState,
            StateModel model,
            PointExplainer points) {
        this.resolved = resolved;
        this.position = position;
        this.operatingState = operatingState;
        this.model = model;
        this.points = points;
        sheet = resolved.sheet(position);
    }

    /** Share of the oil that goes round the medium at an oil temperature [K]. */
    Explanation share(double at) {
        SolvedPoint point = model.at(at);
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(ChainEnds.link("lookedAt", Kind.TEMPERATURE, at, List.of()));
        inputs.add(points.flow(point));
        inputs.add(ChainEnds.link(
                "mediumFlow",
                Kind.FLOW_RATE,
                point.filter().mediumFlow(),
                points.parts(point, EnumSet.of(FilterPart.PLEAT_PACK))));
        model.filter()
                .elementValve()
                .ifPresent(valve ->
                        inputs.add(valveFlow(point, valve, point.filter().elementValve(), false)));
        model.filter()
                .blockValve()
                .ifPresent(valve ->
                        inputs.add(valveFlow(point, valve, point.filter().blockValve(), true)));
        inputs.add(points.viscosity(at));
        double share = point.isAnswer() ? point.filter().bypassShare() : Double.NaN;
        return new Explanation(Explainer.SHARE, subject(), Kind.FRACTION, share, inputs);
    }

    private Explanation valveFlow(SolvedPoint point, SpringValve valve, ValveState state, boolean block) {
        Optional<Section> section = block
                ? resolved.document().root().section("engine").flatMap(engine -> engine.section("blockBypass"))
                : sheet.section("bypass");
        double difference = state.pressureDifference();
        List<Explanation> rate = new ArrayList<>(ChainEnds.of(section, "springRate"));
        if (!block) {
            rate.addAll(BenchChainEnds.of(sheet, "scaleTest"));
        }
        List<Explanation> lift = new ArrayList<>(ChainEnds.of(section, "seatDiameter", "maximumLift", "fullFlowArea"));
        lift.add(ChainEnds.link("valveSpringRate", Kind.SPRING_RATE, valve.springRate(), rate));
        return new Explanation(
                "valveFlow",
                block ? "block" : "",
                Kind.FLOW_RATE,
                state.flowRate(),
                List.of(
                        ChainEnds.link(
                                "openDifference",
                                Kind.PRESSURE_DIFFERENCE,
                                difference,
                                points.partsInShort(point, points.beside(block))),
                        ChainEnds.link(
                                "openingPressure",
                                Kind.PRESSURE_DIFFERENCE,
                                valve.openingPressure(),
                                ChainEnds.of(section, "openingPressure")),
                        ChainEnds.link("valveLift", Kind.LENGTH, valve.lift(difference), lift)));
    }

    /** Chance that the valve opens anywhere in the range, first order. */
    Explanation chance() {
        StateAnalysis analysis =
                new StateAnalyzer(resolved, new Variants(resolved), position, operatingState).analyze();
        StateResult result = analysis.result();
        List<Explanation> inputs = List.of(
                points.valveRatio(result.greatestRatioAt()),
                ChainEnds.link("spreadOfRatio", Kind.RATIO, analysis.sigma(), contributions(analysis.contributions())));
        return new Explanation(Explainer.CHANCE, subject(), Kind.FRACTION, result.chanceOpen(), inputs);
    }

    private static List<Explanation> contributions(Map<String, Double> contributions) {
        double variance = square(Variants.norm(contributions));
        List<Explanation> told = new ArrayList<>();
        contributions.entrySet().stream()
                .filter(entry -> entry.getValue() != 0)
                .sorted(Comparator.comparingDouble((Map.Entry<String, Double> entry) -> -Math.abs(entry.getValue()))
                        .thenComparing(Map.Entry::getKey))
                .limit(TOLD)
                .forEach(entry -> told.add(contribution(entry.getKey(), square(entry.getValue()) / variance)));
        double rest = 1 - told.stream().mapToDouble(Explanation::value).sum();
        if (contributions.size() > told.size() && !told.isEmpty()) {
            told.add(ChainEnds.link("otherContributions", Kind.FRACTION, Math.max(0, rest), List.of()));
        }
        return told;
    }

    private static Explanation contribution(String path, double share) {
        return new Explanation("contribution", path, Kind.FRACTION, share, List.of());
    }

    private String subject() {
        return resolved.candidates().get(position).name() + ", " + operatingState.name();
    }

    private static double square(double value) {
        return value * value;
    }
}
