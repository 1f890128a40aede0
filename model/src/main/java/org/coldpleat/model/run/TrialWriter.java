package org.coldpleat.model.run;

import java.util.Optional;
import org.coldpleat.model.loading.CaptureEstimate;
import org.coldpleat.model.loading.ServiceLife;
import org.coldpleat.shared.casefile.Section;

/** Works out a {@link Trial}: the curve of a glance, for a candidate that may hold dirt, and how it comes to hold it. */
final class TrialWriter {
    private TrialWriter() {}

    static Trial write(ResolvedCase resolved, int position, Duty duty, Trial.Request request) {
        BuiltCandidate clean = resolved.candidates().get(position);
        BuiltCandidate candidate = request.packRatio() == 1
                ? clean
                : clean.withFilter(clean.filter()
                        .withElementResistance(
                                request.packRatio() * clean.filter().elementResistance()));
        SolvedPoint point = new DutyModel(resolved.shared(), candidate.filter(), duty).at(request.temperature());
        boolean seen = point.isAnswer();
        Glance.Candidate curve = GlanceWriter.candidate(resolved, candidate, duty);
        return new Trial(
                curve,
                seen && curve.openingPressure().isPresent()
                        ? point.filter().leadingValve().pressureDifference()
                        : Double.NaN,
                seen ? point.filter().bypassShare() : Double.NaN);
    }

    /** How a candidate loads; empty if the case or the sheet says too little for a service. */
    static Optional<Loading> loading(ResolvedCase resolved, int position, double horizon) {
        Section sheet = resolved.document().root().sections("candidates").get(position);
        Optional<CapacityBuilder.Blocking> blocking =
                CapacityBuilder.blocking(sheet, resolved.candidates().get(position));
        Optional<CaptureEstimate> capture = CapacityBuilder.capture(sheet);
        Optional<DutyCycle> cycle = DutyCycle.of(resolved).map(one -> one.withHorizon(horizon));
        if (blocking.isEmpty() || capture.isEmpty() || cycle.isEmpty()) {
            return Optional.empty();
        }
        ServiceModel model = new ServiceModel(resolved, position, cycle.get());
        return Optional.of(new Loading(
                horizon,
                ServiceLife.run(model.plan(
                        blocking.get().law(),
                        capture.get().likely(),
                        model.openingRatio(cycle.get().running(), cycle.get().oilTemperature())))));
    }
}
