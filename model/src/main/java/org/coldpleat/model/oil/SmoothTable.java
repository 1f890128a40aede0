package org.coldpleat.model.oil;

import org.coldpleat.shared.source.Source;

/**
 * Once continuously differentiable interpolation that makes no new extremes between its nodes; goes on along the end
 * tangents outside.
 */
@Source("F. N. Fritsch and J. Butland 1984, SIAM J. Sci. Stat. Comput. 5, 300, harmonic mean of neighboring slopes")
final class SmoothTable {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /** Nodes in rising order of x, at least two. */
    SmoothTable(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        int last = x.length - 1;
        slope = new double[x.length];
        for (int i = 1; i < last; i++) {
            slope[i] = meanSlope(i);
        }
        slope[0] = secant(0);
        slope[last] = secant(last - 1);
    }

    double value(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0] + slope[0] * (at - x[0]);
        }
        if (at >= x[last]) {
            return y[last] + slope[last] * (at - x[last]);
        }
        int i = interval(at);
        double h = x[i + 1] - x[i];
        double t = (at - x[i]) / h;
        double s = 1 - t;
        return s * s * ((1 + 2 * t) * y[i] + t * h * slope[i])
                + t * t * ((1 + 2 * s) * y[i + 1] - s * h * slope[i + 1]);
    }

    double slope(double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return slope[0];
        }
        if (at >= x[last]) {
            return slope[last];
        }
        int i = interval(at);
        double t = (at - x[i]) / (x[i + 1] - x[i]);
        double s = 1 - t;
        return 6 * s * t * secant(i) + s * (s - 2 * t) * slope[i] + t * (t - 2 * s) * slope[i + 1];
    }

    /** Interval of a place within the table, from where it would be if the nodes were evenly spaced. */
    private int interval(double at) {
        int last = x.length - 2;
        int i = Math.min(last, (int) ((at - x[0]) / (x[last + 1] - x[0]) * (last + 1)));
        while (i > 0 && at < x[i]) {
            i--;
        }
        while (i < last && at >= x[i + 1]) {
            i++;
        }
        return i;
    }

    private double secant(int i) {
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }

    private double meanSlope(int i) {
        double before = secant(i - 1);
        double after = secant(i);
        if (before * after <= 0) {
            return 0;
        }
        double w = x[i + 1] - x[i];
        double v = x[i] - x[i - 1];
        return 3 * (v + w) / ((2 * w + v) / before + (w + 2 * v) / after);
    }
}
