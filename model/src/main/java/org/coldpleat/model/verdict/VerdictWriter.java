package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.NextMeasurements;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Shown;

/**
 * Draws the sentences of a verdict from the numbers, by stated rules: the choice first, then what each candidate does,
 * how the candidates stand to each other and why, and which measurement would help most. Says code and values; the words
 * are in the bundle.
 */
final class VerdictWriter {
    /** Chance of opening up to which a candidate counts as staying shut [1]. */
    static final double UNLIKELY = 0.05;

    private final ResolvedCase resolved;
    private final List<Verdict> verdicts = new ArrayList<>();

    private VerdictWriter(ResolvedCase resolved) {
        this.resolved = resolved;
    }

    /** All sentences on analyses by operating state and candidate. */
    static List<Verdict> write(ResolvedCase resolved, Variants variants, List<List<StateAnalysis>> operatingStates) {
        VerdictWriter writer = new VerdictWriter(resolved);
        writer.choose(operatingStates);
        for (int i = 0; i < resolved.candidates().size(); i++) {
            writer.verdicts.addAll(AnswerSentences.of(resolved, ofCandidate(operatingStates, i)));
        }
        writer.verdicts.addAll(RankSentences.of(resolved, variants, operatingStates));
        operatingStates.stream().flatMap(List::stream).max(closestCall()).ifPresent(writer::nextMeasurement);
        return List.copyOf(writer.verdicts);
    }

    private static List<StateAnalysis> ofCandidate(List<List<StateAnalysis>> operatingStates, int position) {
        return operatingStates.stream()
                .map(operatingState -> operatingState.get(position))
                .toList();
    }

    /** The answer that hangs most in the balance: chance of opening nearest to one half, then the widest spread. */
    private static Comparator<StateAnalysis> closestCall() {
        return Comparator.comparingDouble(
                        (StateAnalysis one) -> -Math.abs(one.result().chanceOpen() - 0.5))
                .thenComparingDouble(StateAnalysis::sigma);
    }

    private void nextMeasurement(StateAnalysis one) {
        List<String> strongest = one.strongest(1);
        if (strongest.isEmpty()) {
            return;
        }
        String path = strongest.get(0);
        double part = one.contributions().get(path) / one.sigma();
        Amount share = Amount.percent(part * part);
        String code = NextMeasurements.codeFor(path);
        verdicts.add(new Verdict(
                code,
                one.operatingState().setting(),
                one.operatingState().name(),
                List.of(resolved.candidateNames().get(one.position())),
                code.equals(NextMeasurements.OTHER) ? List.of(Shown.word(path), share) : List.of(share)));
    }

    /**
     * The most medium among candidates whose valve stays shut down to the coldest named temperature in every state of the
     * engine; of the flow stand where there is no engine.
     */
    private void choose(List<List<StateAnalysis>> all) {
        boolean engine = resolved.shared().engine().isPresent();
        List<List<StateAnalysis>> operatingStates = all.stream()
                .filter(operatingState -> operatingState.get(0).operatingState().isEngine() == engine)
                .toList();
        if (resolved.candidates().size() < 2) {
            return;
        }
        List<BuiltCandidate> shut = new ArrayList<>();
        for (int i = 0; i < resolved.candidates().size(); i++) {
            if (ofCandidate(operatingStates, i).stream().allMatch(VerdictWriter::staysShut)) {
                shut.add(resolved.candidates().get(i));
            }
        }
        Amount coldest = Amount.temperature(resolved.coldestNamed());
        Optional<BuiltCandidate> most =
                shut.stream().max(Comparator.comparingDouble(one -> one.pack().effectiveArea()));
        if (most.isEmpty()) {
            verdicts.add(new Verdict("choice.noneShut", "", "", List.of(), List.of(coldest)));
            return;
        }
        boolean everyOne = shut.size() == resolved.candidates().size();
        String names = String.join(", ", shut.stream().map(BuiltCandidate::name).toList());
        verdicts.add(new Verdict(
                everyOne ? "choice.allShut" : shut.size() == 1 ? "choice.oneShut" : "choice.mostMedium",
                "",
                "",
                List.of(most.get().name()),
                List.of(coldest, Amount.area(most.get().pack().effectiveArea()), Shown.word(names))));
    }

    private static boolean staysShut(StateAnalysis one) {
        return one.model().hasValve()
                && one.result().answer() != StateResult.Answer.UNRESOLVED
                && one.chanceOpenWhenColdest() <= UNLIKELY;
    }
}
