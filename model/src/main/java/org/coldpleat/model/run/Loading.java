package org.coldpleat.model.run;

import java.util.OptionalDouble;
import org.coldpleat.model.loading.ServiceCourse;

/**
 * How a candidate loads with dirt in the service of its case, best values: kept to be asked for one time after another.
 *
 * @param horizon running time up to which it is known [s]
 * @param course from clean to the horizon, or until no law of loading holds
 */
public record Loading(double horizon, ServiceCourse course) {
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
