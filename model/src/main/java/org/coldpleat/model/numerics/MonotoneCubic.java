package org.coldpleat.model.numerics;

import org.coldpleat.shared.source.Source;

/**
 * A curve through points, once continuously differentiable, that makes no new extremes between them, not even by rounding;
 * goes on along the end tangents outside. Equality is identity.
 */
@Source("F. N. Fritsch and J. Butland 1984, SIAM J. Sci. Stat. Comput. 5, 300, harmonic mean of neighboring slopes")
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /**
     * The curve.
     *
     * @param x places of the points, strictly rising, at least two
     * @param y values there, one a place
     */
    public MonotoneCubic(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException(
                    "a curve needs at least 2 places and as many values, had " + x.length + " and " + y.length);
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new IllegalArgumentException(
                        "places must rise, place " + i + " was " + x[i] + " after " + x[i - 1]);
            }
        }
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

    /** Value at a place. */
    public double value(double at) {
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
        double value = s * s * ((1 + 2 * t) * y[i] + t * h * slope[i])
                + t * t * ((1 + 2 * s) * y[i + 1] - s * h * slope[i + 1]);
        return Math.min(Math.max(value, Math.min(y[i], y[i + 1])), Math.max(y[i], y[i + 1]));
    }

    /** Slope at a place. */
    public double slope(double at) {
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
