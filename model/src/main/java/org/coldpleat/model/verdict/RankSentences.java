package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Shown;

/** Says how the candidates stand to each other, which of them can be told apart, and why. */
public final class RankSentences {
    private final ResolvedCase resolved;
    private final Variants variants;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Set<List<String>> once = new HashSet<>();
    private final Set<List<String>> reasoned = new HashSet<>();

    private RankSentences(ResolvedCase resolved, Variants variants) {
        this.resolved = resolved;
        this.variants = variants;
    }

    static List<Verdict> of(ResolvedCase resolved, Variants variants, List<List<StateAnalysis>> operatingStates) {
        RankSentences sentences = new RankSentences(resolved, variants);
        operatingStates.forEach(sentences::rank);
        sentences.compareAreas();
        return sentences.verdicts;
    }

    private void rank(List<StateAnalysis> operatingState) {
        List<StateAnalysis> ordered = Ranking.ordered(operatingState);
        for (int i = 0; i + 1 < ordered.size(); i++) {
            StateAnalysis first = ordered.get(i);
            StateAnalysis second = ordered.get(i + 1);
            List<String> names = List.of(
                    resolved.candidateNames().get(first.position()),
                    resolved.candidateNames().get(second.position()));
            Ranking.Gap gap = Ranking.gap(first, second);
            boolean kelvins = !Double.isNaN(gap.kelvins());
            Amount size = kelvins ? Amount.difference(gap.kelvins()) : Amount.ratio(Math.exp(gap.logRatio()));
            String code = (gap.separated() ? "rank.opens" : "rank.notSeparated") + (kelvins ? "Warmer" : "Nearer");
            boolean said = !once.add(List.of(code, names.get(0), names.get(1)));
            if (said && !kelvins) {
                continue;
            }
            say(first.operatingState(), code, names, size);
            if (gap.separated()
                    && reasoned.add(List.of(first.operatingState().setting(), names.get(0), names.get(1)))) {
                reasons(first, second, names, kelvins ? second.reference() : resolved.coldestNamed());
            }
        }
    }

    private void reasons(StateAnalysis first, StateAnalysis second, List<String> names, double temperature) {
        BuiltCandidate one = resolved.candidates().get(first.position());
        BuiltCandidate other = resolved.candidates().get(second.position());
        for (Reasons.Reason reason : new Reasons(resolved, first.operatingState(), temperature)
                .between(first.position(), second.position())) {
            List<Shown> values = new ArrayList<>();
            values.add(Amount.ratio(Math.exp(Math.abs(reason.logEffect()))));
            values.addAll(reasonValues(reason.code(), one, other));
            String direction = reason.logEffect() > 0 ? ".earlier" : ".later";
            say(first.operatingState(), "reason." + reason.code() + direction, names, values.toArray(Shown[]::new));
        }
    }

    public static List<Shown> reasonValues(String code, BuiltCandidate one, BuiltCandidate other) {
        return switch (code) {
            case "area" ->
                List.of(
                        Amount.area(one.pack().effectiveArea()),
                        Amount.area(other.pack().effectiveArea()));
            case "resistance" ->
                List.of(Amount.resistance(one.mediumResistance()), Amount.resistance(other.mediumResistance()));
            case "channels" ->
                List.of(
                        Amount.ratio(one.pack().channelFactor()),
                        Amount.ratio(other.pack().channelFactor()));
            case "opening" -> List.of(openingPressure(one), openingPressure(other));
            default -> List.of();
        };
    }

    private static Shown openingPressure(BuiltCandidate candidate) {
        return Amount.pressure(candidate.filter().elementValve().orElseThrow().openingPressure());
    }

    /** Neighbors in the order of effective area. */
    private void compareAreas() {
        List<BuiltCandidate> candidates = resolved.candidates();
        List<Integer> order = IntStream.range(0, candidates.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> -candidates.get(i).pack().effectiveArea()))
                .toList();
        for (int i = 0; i + 1 < order.size(); i++) {
            BuiltCandidate first = candidates.get(order.get(i));
            BuiltCandidate second = candidates.get(order.get(i + 1));
            double difference = first.pack().effectiveArea() - second.pack().effectiveArea();
            double spread =
                    Variants.normOfDifference(areaContributions(order.get(i)), areaContributions(order.get(i + 1)));
            verdicts.add(new Verdict(
                    difference > Ranking.SEPARATED * spread ? "area.larger" : "area.notSeparated",
                    "",
                    "",
                    List.of(first.name(), second.name()),
                    List.of(
                            Amount.area(first.pack().effectiveArea()),
                            Amount.area(second.pack().effectiveArea()))));
        }
    }

    private Map<String, Double> areaContributions(int position) {
        return variants.ownContributions(position, one -> one.pack().effectiveArea());
    }

    private void say(OperatingState operatingState, String code, List<String> candidates, Shown... values) {
        verdicts.add(new Verdict(code, operatingState.setting(), operatingState.name(), candidates, List.of(values)));
    }
}
