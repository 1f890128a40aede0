package org.coldpleat.model.numerics;

/**
 * Newton iteration for the root of a decreasing function that never leaves a bracket known to hold the root. Feed it
 * the value and slope at {@link #point()}; it moves the point. Whenever the bracket has not halved in two steps, and the
 * proposed steps do not shrink to a quarter each two either, it bisects, so that the root is found to the last digit in a
 * bounded number of steps. The upper end may be infinite: the point then at most quadruples in one step, or moves by 1.
 */
public final class BracketedNewton {
    private double low;
    private double high;
    private double point;
    private double widthBefore = Double.POSITIVE_INFINITY;
    private double widthTwoBefore = Double.POSITIVE_INFINITY;
    private double moveBefore = Double.POSITIVE_INFINITY;
    private double moveTwoBefore = Double.POSITIVE_INFINITY;

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
        stepTo(value, point - value / slope);
    }

    /**
     * Moves on to a proposed point when it lies inside the bracket.
     *
     * @param value function at the point; only its sign counts
     * @param proposal where the caller expects the root
     */
    public void stepTo(double value, double proposal) {
        if (value > 0) {
            low = point;
        } else {
            high = point;
        }
        double width = high - low;
        double move = Math.abs(proposal - point);
        boolean halved = width <= 0.5 * widthTwoBefore;
        boolean closing = move <= 0.25 * moveTwoBefore;
        widthTwoBefore = widthBefore;
        widthBefore = width;
        moveTwoBefore = moveBefore;
        moveBefore = move;
        double ceiling = Double.isInfinite(high) ? Math.max(4 * point, low + 1) : high;
        if ((halved || closing) && proposal > low && proposal < ceiling) {
            point = proposal;
        } else {
            point = Double.isInfinite(high) ? ceiling : 0.5 * (low + high);
            moveBefore = Double.POSITIVE_INFINITY;
        }
    }

    /** True when no double is left between the ends of the bracket. */
    public boolean isExhausted() {
        double middle = 0.5 * (low + high);
        return Double.isFinite(high) && (middle <= low || middle >= high);
    }
}
