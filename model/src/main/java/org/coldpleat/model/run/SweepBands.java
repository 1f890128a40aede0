package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.coldpleat.model.coldstart.StartUpResult;

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

    /** One start of one candidate. */
    private record Part(double temperature, StartBands bands) {}

    /** Candidates with their rows; fewer than asked for if cancelled. */
    List<ColdStartSweep.Candidate> candidates(int[] positions, double[] temperatures, Progress progress) {
        List<List<Part>> parts = new ArrayList<>();
        for (int position : positions) {
            parts.add(DoubleStream.of(temperatures)
                    .mapToObj(at -> new Part(at, new StartBands(resolved, variants, plan(at), position)))
                    .toList());
        }
        Counted counted = new Counted(
                progress,
                parts.stream()
                        .flatMap(List::stream)
                        .mapToInt(part -> part.bands().starts())
                        .sum());
        List<ColdStartSweep.Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < positions.length; i++) {
            List<ColdStartSweep.Row> rows = new ArrayList<>();
            for (Part part : parts.get(i)) {
                part.bands().candidate(counted).ifPresent(start -> rows.add(row(part.temperature(), start)));
            }
            if (rows.size() < temperatures.length) {
                return candidates;
            }
            BuiltCandidate built = resolved.candidates().get(positions[i]);
            candidates.add(new ColdStartSweep.Candidate(
                    built.name(), plan(temperatures[0]).hasValve(built), rows));
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
        StartUpResult start = candidate.start();
        return new ColdStartSweep.Row(
                temperature,
                start.status().name(),
                start.status().isAnswer(),
                start.fill().openSeconds(),
                start.connected().openSeconds(),
                start.fill().unfilteredVolume(),
                start.connected().unfilteredVolume(),
                start.valveRatioPeak().value(),
                Optional.of(new ColdStartSweep.Bands(
                        candidate.band(StartQuantity.OPEN_SECONDS), candidate.band(StartQuantity.UNFILTERED))));
    }
}
