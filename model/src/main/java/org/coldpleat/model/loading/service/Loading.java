package org.coldpleat.model.loading.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;
import org.coldpleat.shared.casefile.Section;

/**
 * How a candidate loads with dirt in the service of its case, best values: kept to be asked for one time after another.
 *
 * @param horizon running time up to which it is known [s]
 * @param course from clean to the horizon, or until no law of loading holds
 */
public record Loading(double horizon, ServiceCourse course) {
    /**
     * How a candidate loads; empty if the case or the sheet says too little for a service.
     *
     * @param position of the candidate
     * @param horizon running time up to which to know it [s], above 0
     */
    public static Optional<Loading> of(ResolvedCase resolved, int position, double horizon) {
        Section sheet = resolved.sheet(position);
        Optional<CapacityBuilder.Blocking> blocking = CapacityBuilder.blocking(sheet, resolved.measured(position));
        Optional<DutyCycle> cycle = DutyCycle.of(resolved).map(one -> one.withHorizon(horizon));
        if (blocking.isEmpty() || cycle.isEmpty()) {
            return Optional.empty();
        }
        ServiceModel model = new ServiceModel(resolved, position, cycle.get());
        return Optional.of(new Loading(
                horizon,
                ServiceLife.run(model.plan(
                        blocking.get().law(),
                        CapacityBuilder.capture(sheet).estimate().likely(),
                        model.openingRatio(cycle.get().running(), cycle.get().oilTemperature())))));
    }

    /**
     * Resistance of the pack over its clean one [1].
     *
     * @param time running time [s], at least 0, at most {@link #horizon}
     * @return empty if the element is full by then
     * @throws IllegalArgumentException if the time lies outside
     */
    public OptionalDouble packRatioAfter(double time) {
        if (!(time >= 0 && time <= horizon)) {
            throw new IllegalArgumentException("time must lie within 0 and " + horizon + " s, was " + time);
        }
        double ratio = course.packRatioAt(time);
        return Double.isNaN(ratio) ? OptionalDouble.empty() : OptionalDouble.of(ratio);
    }
}
