package org.coldpleat.model.run;

import java.util.Optional;
import org.coldpleat.model.loading.CaptureEstimate;
import org.coldpleat.model.loading.ServiceCourse;
import org.coldpleat.model.loading.ServiceLife;
import org.coldpleat.shared.casefile.Section;

/** Works out a {@link Trial}: the curve of a glance, for a candidate that may hold the dirt of its service. */
final class TrialWriter {
    private TrialWriter() {}

    static Optional<Trial> write(ResolvedCase resolved, int position, Duty duty, Trial.Request request) {
        return built(resolved, position, request.inService()).map(candidate -> {
            SolvedPoint point = new DutyModel(resolved.shared(), candidate.filter(), duty).at(request.temperature());
            boolean seen = point.isAnswer();
            Glance.Candidate curve = GlanceWriter.candidate(resolved, candidate, duty);
            return new Trial(
                    curve,
                    seen && curve.openingPressure().isPresent()
                            ? point.filter().leadingValve().pressureDifference()
                            : Double.NaN,
                    seen ? point.filter().bypassShare() : Double.NaN);
        });
    }

    private static Optional<BuiltCandidate> built(ResolvedCase resolved, int position, double inService) {
        BuiltCandidate clean = resolved.candidates().get(position);
        return inService == 0
                ? Optional.of(clean)
                : packRatio(resolved, position, inService)
                        .map(ratio -> clean.withFilter(clean.filter()
                                .withElementResistance(ratio * clean.filter().elementResistance())));
    }

    /** How many times its clean value the pack resists after a time in service [1]; empty if the element is full by then. */
    private static Optional<Double> packRatio(ResolvedCase resolved, int position, double inService) {
        Section sheet = resolved.document().root().sections("candidates").get(position);
        Optional<CapacityBuilder.Blocking> blocking =
                CapacityBuilder.blocking(sheet, resolved.candidates().get(position));
        Optional<CaptureEstimate> capture = CapacityBuilder.capture(sheet);
        Optional<DutyCycle> cycle = DutyCycle.of(resolved).map(one -> one.withHorizon(inService));
        if (blocking.isEmpty() || capture.isEmpty() || cycle.isEmpty()) {
            return Optional.empty();
        }
        ServiceModel model = new ServiceModel(resolved, position, cycle.get());
        ServiceCourse course = ServiceLife.run(model.plan(
                blocking.get().law(),
                capture.get().likely(),
                model.openingRatio(cycle.get().running(), cycle.get().oilTemperature())));
        return course.status() == ServiceCourse.Status.HORIZON
                ? Optional.of(course.last().packRatio())
                : Optional.empty();
    }
}
