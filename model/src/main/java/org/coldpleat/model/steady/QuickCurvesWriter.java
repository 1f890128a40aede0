package org.coldpleat.model.steady;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;

/** Works out a {@link QuickCurves}. The same numbers as a comparison, without what needs an unknown moved. */
public final class QuickCurvesWriter {
    private QuickCurvesWriter() {}

    public static QuickCurves write(ResolvedCase resolved, OperatingState operatingState) {
        QuickCurves.Candidate[] candidates =
                new QuickCurves.Candidate[resolved.candidates().size()];
        IntStream.range(0, candidates.length)
                .parallel()
                .forEach(i -> candidates[i] =
                        candidate(resolved, resolved.candidates().get(i), operatingState));
        return new QuickCurves(
                resolved.title(),
                resolved.isInvented(),
                operatingState.name(),
                resolved.from(),
                resolved.to(),
                resolved.named(),
                List.of(candidates));
    }

    /** One candidate, as built or changed since. */
    static QuickCurves.Candidate candidate(
            ResolvedCase resolved, BuiltCandidate candidate, OperatingState operatingState) {
        StateModel model = new StateModel(resolved.shared(), candidate.filter(), operatingState);
        CurveTracer.Traced traced = CurveTracer.trace(model, resolved.from(), resolved.to());
        return new QuickCurves.Candidate(
                candidate.name(),
                traced.curve(),
                model.hasValve() ? intervals(resolved, model, traced.last()) : List.of(),
                openingPressure(model));
    }

    private static List<double[]> intervals(ResolvedCase resolved, StateModel model, Optional<OperatingPoint> near) {
        StateSolver solver = model.heldShutSolver();
        near.ifPresent(solver::startAt);
        return OpeningFinder.over(resolved.from(), resolved.to()).find(solver::ratioAt).intervals().stream()
                .map(interval -> new double[] {interval.low(), interval.high()})
                .toList();
    }

    private static OptionalDouble openingPressure(StateModel model) {
        return model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .map(valve -> OptionalDouble.of(valve.openingPressure()))
                .orElse(OptionalDouble.empty());
    }
}
