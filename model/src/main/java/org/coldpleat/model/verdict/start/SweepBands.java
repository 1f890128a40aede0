package org.coldpleat.model.verdict.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.StartBands;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.coldstart.StartSweep;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;

/** Starts from a range of temperatures with their bands: at each temperature the bands of a single start. */
final class SweepBands {
    private final ResolvedCase resolved;
    private final ColdStartRequest request;
    private final Variants variants;

    SweepBands(ResolvedCase resolved, ColdStartRequest request) {
        this.resolved = resolved;
        this.request = request;
        variants = new Variants(resolved);
    }

    /** Candidates with their rows; fewer than asked for if cancelled. */
    List<ColdStartSweep.Candidate> candidates(int[] positions, double[] temperatures, Progress progress) {
        List<StartPlan> plans =
                DoubleStream.of(temperatures).mapToObj(this::plan).toList();
        List<List<StartBands>> all = IntStream.of(positions)
                .mapToObj(position -> plans.stream()
                        .map(plan -> new StartBands(resolved, variants, plan, position))
                        .toList())
                .toList();
        Counted counted = new Counted(
                progress,
                all.stream().flatMap(List::stream).mapToInt(StartBands::starts).sum());
        List<ColdStartSweep.Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < positions.length; i++) {
            List<ColdStartSweep.Row> rows = new ArrayList<>();
            for (int k = 0; k < temperatures.length; k++) {
                double at = temperatures[k];
                all.get(i).get(k).candidate(counted).ifPresent(start -> rows.add(row(at, start)));
            }
            if (rows.size() < temperatures.length) {
                return candidates;
            }
            BuiltCandidate built = resolved.candidates().get(positions[i]);
            candidates.add(
                    new ColdStartSweep.Candidate(built.name(), plans.get(0).hasValve(built), rows));
        }
        return candidates;
    }

    private StartPlan plan(double temperature) {
        OptionalDouble everywhere = OptionalDouble.of(temperature);
        return new StartPlan(
                resolved,
                new ColdStartRequest(request.candidate(), request.schedule(), request.state(), everywhere, everywhere));
    }

    private static ColdStartSweep.Row row(double temperature, ColdStartCandidate candidate) {
        ColdStartSweep.Bands bands = new ColdStartSweep.Bands(
                candidate.band(StartQuantity.OPEN_SECONDS), candidate.band(StartQuantity.UNFILTERED));
        return ColdStartWriter.row(StartSweep.Row.of(temperature, candidate.start()), Optional.of(bands));
    }
}
