package org.coldpleat.model.coldstart;

import java.util.Arrays;
import org.coldpleat.model.numerics.MonotoneCubic;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Validity;

/**
 * Oil temperature over time as logged, joined by a monotone cubic: no overshoot between points, smooth slope. Before the
 * first point it has the first temperature, after the last one the last. Equality is identity.
 */
@Validity("times strictly rising; held constant outside the log")
public final class TemperatureTrace {
    private final double[] times;
    private final double lowest;
    private final MonotoneCubic curve;

    /**
     * A trace through points.
     *
     * @param times [s], strictly rising, at least two
     * @param temperatures [K], above 0, one a time
     */
    public TemperatureTrace(double[] times, double[] temperatures) {
        if (times.length < 2 || times.length != temperatures.length) {
            throw new IllegalArgumentException("a trace needs at least 2 times and as many temperatures, had "
                    + times.length + " and " + temperatures.length);
        }
        for (int i = 0; i < times.length; i++) {
            Require.positive("temperature of trace point " + i, temperatures[i], "K");
            if (i > 0) {
                Require.positive("time step before trace point " + i, times[i] - times[i - 1], "s");
            }
        }
        this.times = times.clone();
        lowest = Arrays.stream(temperatures).min().getAsDouble();
        curve = new MonotoneCubic(times, temperatures);
    }

    /** Time of the last point [s]. */
    public double end() {
        return times[times.length - 1];
    }

    /** Lowest temperature of all points [K]. */
    public double lowest() {
        return lowest;
    }

    /** Temperature [K] at a time [s]. */
    public double at(double time) {
        return curve.value(Math.min(Math.max(time, times[0]), end()));
    }

    /** Rate of change [K/s] at a time [s]; 0 outside the log. */
    public double rate(double time) {
        return time < times[0] || time >= end() ? 0 : curve.slope(time);
    }
}
