package org.coldpleat.model.coldstart;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Oil temperature over time as logged, joined by a monotone cubic: no overshoot between points, smooth slope. Before the
 * first point it has the first temperature, after the last one the last. Equality is identity.
 */
@Source("Fritsch and Carlson 1980, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17(2):238-246")
@Validity("times strictly rising; held constant outside the log")
public final class TemperatureTrace {
    private final double[] times;
    private final double[] temperatures;
    private final double[] slopes;

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
        this.temperatures = temperatures.clone();
        slopes = slopes(times, temperatures);
    }

    /** Time of the last point [s]. */
    public double end() {
        return times[times.length - 1];
    }

    /** Lowest temperature of all points [K]. */
    public double lowest() {
        double lowest = temperatures[0];
        for (double temperature : temperatures) {
            lowest = Math.min(lowest, temperature);
        }
        return lowest;
    }

    /** Temperature [K] at a time [s]. */
    public double at(double time) {
        if (time <= times[0]) {
            return temperatures[0];
        }
        if (time >= end()) {
            return temperatures[temperatures.length - 1];
        }
        int i = cell(time);
        double h = times[i + 1] - times[i];
        double u = (time - times[i]) / h;
        double rise = temperatures[i + 1] - temperatures[i];
        double a = h * slopes[i] - rise;
        double b = rise - h * slopes[i + 1];
        return temperatures[i] + u * rise + u * (1 - u) * (a * (1 - u) + b * u);
    }

    /** Rate of change [K/s] at a time [s]; 0 outside the log. */
    public double rate(double time) {
        if (time < times[0] || time >= end()) {
            return 0;
        }
        int i = cell(time);
        double h = times[i + 1] - times[i];
        double u = (time - times[i]) / h;
        double rise = temperatures[i + 1] - temperatures[i];
        double a = h * slopes[i] - rise;
        double b = rise - h * slopes[i + 1];
        return (rise + (1 - 2 * u) * (a * (1 - u) + b * u) + u * (1 - u) * (b - a)) / h;
    }

    private int cell(double time) {
        int low = 0;
        int high = times.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (times[middle] <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Weighted harmonic mean of the neighboring secants (Fritsch and Butland), 0 at a turning point. */
    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] m = new double[n];
        m[0] = (y[1] - y[0]) / (x[1] - x[0]);
        m[n - 1] = (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]);
        for (int i = 1; i < n - 1; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double left = (y[i] - y[i - 1]) / before;
            double right = (y[i + 1] - y[i]) / after;
            if (left * right > 0) {
                double w = 2 * after + before;
                double v = after + 2 * before;
                m[i] = (w + v) / (w / left + v / right);
            }
        }
        return m;
    }
}
