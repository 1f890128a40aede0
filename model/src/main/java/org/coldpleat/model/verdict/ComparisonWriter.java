package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.StateAnalyzer;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;

/** Compares all candidates of a case in all states. */
public final class ComparisonWriter {
    private final ResolvedCase resolved;
    private final Variants variants;
    private final int candidates;
    private final int operatingStates;
    private final StateAnalysis[] analyses;

    private ComparisonWriter(ResolvedCase resolved) {
        this.resolved = resolved;
        variants = new Variants(resolved);
        candidates = resolved.candidates().size();
        operatingStates = resolved.operatingStates().size();
        analyses = new StateAnalysis[candidates * operatingStates];
    }

    /** The comparison; nothing if cancelled. */
    public static Optional<Comparison> write(ResolvedCase resolved, Progress progress) {
        if (progress.cancelled()) {
            return Optional.empty();
        }
        ComparisonWriter writer = new ComparisonWriter(resolved);
        int parts = writer.analyses.length;
        return new Counted(progress, parts).each(parts, writer::analyze)
                ? Optional.of(writer.comparison())
                : Optional.empty();
    }

    private void analyze(int i) {
        OperatingState operatingState = resolved.operatingStates().get(i % operatingStates);
        analyses[i] = new StateAnalyzer(resolved, variants, i / operatingStates, operatingState).analyze();
    }

    private Comparison comparison() {
        List<CandidateResult> results = new ArrayList<>();
        for (int i = 0; i < candidates; i++) {
            List<StateResult> states = new ArrayList<>();
            for (int j = 0; j < operatingStates; j++) {
                states.add(analyses[i * operatingStates + j].result());
            }
            results.add(new CandidateResult(
                    resolved.candidates().get(i).name(), SheetWriter.sheet(resolved, variants, i), states));
        }
        List<List<StateAnalysis>> byDuty = new ArrayList<>();
        for (int j = 0; j < operatingStates; j++) {
            List<StateAnalysis> one = new ArrayList<>();
            for (int i = 0; i < candidates; i++) {
                one.add(analyses[i * operatingStates + j]);
            }
            byDuty.add(List.copyOf(one));
        }
        return new Comparison(
                resolved.title(),
                resolved.isInvented(),
                resolved.digest(),
                resolved.from(),
                resolved.to(),
                resolved.named(),
                results,
                VerdictWriter.write(resolved, variants, byDuty),
                resolved.assumptions(),
                NoticeCollector.collect(resolved, byDuty));
    }
}
