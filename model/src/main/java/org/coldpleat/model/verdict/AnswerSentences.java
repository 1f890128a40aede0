package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Shown;

/** Says of one candidate what its bypass valve does in each state. */
final class AnswerSentences {
    private final ResolvedCase resolved;
    private final String name;
    private final List<Verdict> verdicts = new ArrayList<>();

    private AnswerSentences(ResolvedCase resolved, String name) {
        this.resolved = resolved;
        this.name = name;
    }

    static List<Verdict> of(ResolvedCase resolved, List<StateAnalysis> states) {
        AnswerSentences sentences = new AnswerSentences(
                resolved, resolved.candidateNames().get(states.get(0).position()));
        List<StateAnalysis> shut =
                states.stream().filter(AnswerSentences::plainlyShut).toList();
        if (!shut.isEmpty()) {
            sentences.shut(shut, shut.size() == states.size());
        }
        states.stream().filter(one -> !plainlyShut(one)).forEach(sentences::answer);
        states.stream()
                .filter(one -> !Double.isNaN(one.result().fixedFlowOpening()))
                .max(Comparator.comparingDouble(AnswerSentences::surprise))
                .filter(one -> surprise(one) > 1)
                .ifPresent(sentences::contrast);
        return sentences.verdicts;
    }

    private static boolean plainlyShut(StateAnalysis one) {
        return one.result().answer() == StateResult.Answer.NEVER && one.result().chanceOpen() <= VerdictWriter.UNLIKELY;
    }

    /** How far pump flow times cold resistance would mislead [K]. */
    private static double surprise(StateAnalysis one) {
        return one.result().fixedFlowOpening()
                - one.result().openingTemperature().map(OpeningBand::value).orElse(0.0);
    }

    /** One sentence for all states in which the valve plainly stays shut. */
    private void shut(List<StateAnalysis> shut, boolean everywhere) {
        StateAnalysis nearest = shut.stream()
                .max(Comparator.comparingDouble(
                        one -> one.result().greatestRatio().value()))
                .orElseThrow();
        String states = String.join(
                ", ", shut.stream().map(one -> one.operatingState().name()).toList());
        say(
                nearest.operatingState(),
                everywhere ? "open.neverAnywhere" : "open.never",
                Amount.temperature(resolved.from()),
                Amount.temperature(resolved.to()),
                Amount.percent(nearest.result().greatestRatio().value()),
                Amount.temperature(nearest.result().greatestRatioAt()),
                Shown.word(states));
    }

    private void answer(StateAnalysis one) {
        StateResult result = one.result();
        switch (result.answer()) {
            case NO_VALVE ->
                say(
                        one.operatingState(),
                        "open.noValve",
                        Amount.pressure(coldest(result).pressureDrop()));
            case UNRESOLVED -> say(one.operatingState(), "open.unresolved");
            case ALWAYS ->
                say(
                        one.operatingState(),
                        "open.always",
                        Amount.temperature(resolved.from()),
                        Amount.temperature(resolved.to()));
            case NEVER ->
                say(
                        one.operatingState(),
                        "open.cannotExclude",
                        Amount.percent(result.greatestRatio().value()),
                        Amount.temperature(result.greatestRatioAt()),
                        Amount.percent(result.chanceOpen()));
            case BELOW -> below(one);
            case INTERVALS -> say(one.operatingState(), "open.intervals", intervals(result));
        }
    }

    private void below(StateAnalysis one) {
        StateResult result = one.result();
        OpeningBand band = result.openingTemperature().orElseThrow();
        StateResult.ShareAt coldest = coldest(result);
        boolean sure = !Double.isInfinite(band.low());
        double half = band.halfWidth();
        Amount high = Double.isInfinite(band.high())
                ? Amount.temperature(resolved.to())
                : Amount.temperature(band.high()).withBand(half);
        say(
                one.operatingState(),
                sure ? "open.below" : "open.belowOrNever",
                Amount.temperature(band.value()).withBand(half),
                sure ? Amount.temperature(band.low()).withBand(half) : Amount.percent(1 - result.chanceOpen()),
                high,
                Amount.temperature(coldest.temperature()),
                Amount.percent(coldest.share().value()));
    }

    private static StateResult.ShareAt coldest(StateResult result) {
        return result.shares().stream()
                .min(Comparator.comparingDouble(StateResult.ShareAt::temperature))
                .orElseThrow();
    }

    private static Shown intervals(StateResult result) {
        return Shown.several(
                "; ",
                result.intervals().stream()
                        .map(interval -> Shown.several(
                                " to ", List.of(Amount.temperature(interval[0]), Amount.temperature(interval[1]))))
                        .toList());
    }

    /** Pump displacement times cold resistance against the whole circuit. */
    private void contrast(StateAnalysis one) {
        Amount naive = Amount.temperature(one.result().fixedFlowOpening());
        if (one.result().openingTemperature().isPresent()) {
            OpeningBand opening = one.result().openingTemperature().get();
            say(
                    one.operatingState(),
                    "contrast.fixedFlow",
                    naive.withBand(opening.halfWidth()),
                    Amount.temperature(opening.value()).withBand(opening.halfWidth()));
        } else {
            say(one.operatingState(), "contrast.fixedFlowNever", naive);
        }
    }

    private void say(OperatingState operatingState, String code, Shown... values) {
        verdicts.add(
                new Verdict(code, operatingState.setting(), operatingState.name(), List.of(name), List.of(values)));
    }
}
