package org.coldpleat.model.steady;

import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;

/** Works out a {@link Trial}: the quick curve, for a candidate that may hold dirt, and how it comes to hold it. */
public final class TrialWriter {
    private TrialWriter() {}

    public static Trial write(
            ResolvedCase resolved, int position, OperatingState operatingState, Trial.Request request) {
        BuiltCandidate candidate = CandidateChange.NONE
                .timesPack(request.packRatio())
                .applyTo(resolved, position)
                .built();
        SolvedPoint point =
                new StateModel(resolved.shared(), candidate.filter(), operatingState).at(request.temperature());
        boolean seen = point.isAnswer();
        QuickCurves.Candidate curve = QuickCurvesWriter.candidate(resolved, candidate, operatingState);
        return new Trial(
                curve,
                seen && curve.openingPressure().isPresent()
                        ? point.filter().leadingValve().pressureDifference()
                        : Double.NaN,
                seen ? point.filter().bypassShare() : Double.NaN);
    }
}
