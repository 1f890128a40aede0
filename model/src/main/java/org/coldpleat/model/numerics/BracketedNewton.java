package org.coldpleat.model.numerics;

/**
 * Newton iteration for the root of a decreasing function that never leaves a bracket known to hold the root. Feed it
 * the value and slope at {@link #point()}; it moves the point. When Newton steps fail to halve the bracket or the value
 * often enough, it bisects. The upper end may be infinite: the point then at most
 * quadruples in one step, or moves by 1.
 */
public final class BracketedNewton {
    private double low;
    private double high;
    private double point;
    private double lastValue = Double.POSITIVE_INFINITY;
    private int slow;

    /**
     * Starts the iteration.
     *
     * @param low where the function is not below 0
     * @param high where the function is not above 0; may be infinite
     * @param start first point, moved into the bracket if outside
     */
    public BracketedNewton(double low, double high, double start) {
        this.low = low;
        this.high = high;
        this.point = Math.min(Math.max(start, low), high);
    }

    /** Where the function is wanted next. */
    public double point() {
        return point;
    }

    /**
     * Moves on by a Newton step.
     *
     * @param value function at the point
     * @param slope its derivative, below 0
     */
    public void step(double value, double slope) {
        step(value, point - value / slope, Math.abs(value));
    }

    /**
     * Moves on to a proposed point when it lies inside the bracket.
     *
     * @param value function at the point; only its sign counts
     * @param proposal where the caller expects the root
     * @param size size of the miss, to notice slow progress
     */
    public void step(double value, double proposal, double size) {
        if (value > 0) {
            low = point;
        } else {
            high = point;
        }
        slow = size > 0.5 * lastValue ? slow + 1 : 0;
        lastValue = size;
        double ceiling = Double.isInfinite(high) ? Math.max(4 * point, low + 1) : high;
        boolean stuck = slow >= 3;
        slow = stuck ? 0 : slow;
        if (!stuck && proposal > low && proposal < ceiling) {
            point = proposal;
        } else {
            point = Double.isInfinite(high) ? ceiling : 0.5 * (low + high);
        }
    }

    /** True when no double is left between the ends of the bracket. */
    public boolean isExhausted() {
        double middle = 0.5 * (low + high);
        return Double.isFinite(high) && (middle <= low || middle >= high);
    }
}
