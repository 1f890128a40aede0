package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Duty;
import org.coldpleat.shared.quantity.Text;

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
        String states =
                String.join(", ", shut.stream().map(one -> one.duty().name()).toList());
        say(
                nearest.duty(),
                everywhere ? "open.neverAnywhere" : "open.never",
                Text.celsius(resolved.from()),
                Text.celsius(resolved.to()),
                Text.percent(nearest.result().greatestRatio().value()),
                Text.celsius(nearest.result().greatestRatioAt()),
                states);
    }

    private void answer(StateAnalysis one) {
        StateResult result = one.result();
        switch (result.answer()) {
            case NO_VALVE ->
                say(one.duty(), "open.noValve", Text.kilopascals(coldest(result).pressureDrop()));
            case UNRESOLVED -> say(one.duty(), "open.unresolved");
            case ALWAYS -> say(one.duty(), "open.always", Text.celsius(resolved.from()), Text.celsius(resolved.to()));
            case NEVER ->
                say(
                        one.duty(),
                        "open.cannotExclude",
                        Text.percent(result.greatestRatio().value()),
                        Text.celsius(result.greatestRatioAt()),
                        Text.percent(result.chanceOpen()));
            case BELOW -> below(one);
            case INTERVALS -> say(one.duty(), "open.intervals", intervals(result));
        }
    }

    private void below(StateAnalysis one) {
        StateResult result = one.result();
        OpeningBand band = result.openingTemperature().orElseThrow();
        StateResult.ShareAt coldest = coldest(result);
        boolean sure = !Double.isInfinite(band.low());
        String high = Double.isInfinite(band.high()) ? Text.celsius(resolved.to()) : Text.celsius(band.high());
        say(
                one.duty(),
                sure ? "open.below" : "open.belowOrNever",
                Text.celsius(band.value()),
                sure ? Text.celsius(band.low()) : Text.percent(1 - result.chanceOpen()),
                high,
                Text.celsius(coldest.temperature()),
                Text.percent(coldest.share().value()));
    }

    private static StateResult.ShareAt coldest(StateResult result) {
        return result.shares().stream()
                .min(Comparator.comparingDouble(StateResult.ShareAt::temperature))
                .orElseThrow();
    }

    private static String intervals(StateResult result) {
        return String.join(
                "; ",
                result.intervals().stream()
                        .map(interval -> Text.celsius(interval[0]) + " to " + Text.celsius(interval[1]))
                        .toList());
    }

    /** Pump displacement times cold resistance against the whole circuit. */
    private void contrast(StateAnalysis one) {
        String naive = Text.celsius(one.result().fixedFlowOpening());
        if (one.result().openingTemperature().isPresent()) {
            double opening = one.result().openingTemperature().get().value();
            say(one.duty(), "contrast.fixedFlow", naive, Text.celsius(opening));
        } else {
            say(one.duty(), "contrast.fixedFlowNever", naive);
        }
    }

    private void say(Duty duty, String code, String... values) {
        verdicts.add(new Verdict(code, duty.setting(), duty.name(), List.of(name), List.of(values)));
    }
}
