package org.coldpleat.model.steady;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.Duty;

/** Works out a {@link Glance}. The same numbers as a comparison, without what needs an unknown moved. */
public final class GlanceWriter {
    private GlanceWriter() {}

    public static Glance write(ResolvedCase resolved, Duty duty) {
        Glance.Candidate[] candidates =
                new Glance.Candidate[resolved.candidates().size()];
        IntStream.range(0, candidates.length)
                .parallel()
                .forEach(i -> candidates[i] =
                        candidate(resolved, resolved.candidates().get(i), duty));
        return new Glance(
                resolved.title(),
                resolved.isInvented(),
                duty.name(),
                resolved.from(),
                resolved.to(),
                resolved.named(),
                List.of(candidates));
    }

    /** One candidate, as built or changed since. */
    static Glance.Candidate candidate(ResolvedCase resolved, BuiltCandidate candidate, Duty duty) {
        DutyModel model = new DutyModel(resolved.shared(), candidate.filter(), duty);
        CurveTracer.Traced traced = CurveTracer.trace(model, resolved.from(), resolved.to());
        return new Glance.Candidate(
                candidate.name(),
                traced.curve(),
                model.hasValve() ? intervals(resolved, model, traced.last()) : List.of(),
                openingPressure(model));
    }

    private static List<double[]> intervals(ResolvedCase resolved, DutyModel model, Optional<OperatingPoint> near) {
        return OpeningFinder.over(resolved.from(), resolved.to())
                .find(at -> {
                    SolvedPoint point = model.heldShutAt(at, near);
                    return point.isAnswer() ? model.ratio(point) : Double.NaN;
                })
                .intervals()
                .stream()
                .map(interval -> new double[] {interval.low(), interval.high()})
                .toList();
    }

    private static OptionalDouble openingPressure(DutyModel model) {
        return model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .map(valve -> OptionalDouble.of(valve.openingPressure()))
                .orElse(OptionalDouble.empty());
    }
}
