package org.coldpleat.validation.coverage;

/**
 * Bands that hold the truth, out of a number.
 *
 * @param inside bands that hold it
 * @param below truths below their band
 * @param above truths above their band
 */
public record Tally(int inside, int below, int above) {
    static final Tally NONE = new Tally(0, 0, 0);

    Tally plus(double truth, double low, double high) {
        return truth < low
                ? new Tally(inside, below + 1, above)
                : truth > high ? new Tally(inside, below, above + 1) : new Tally(inside + 1, below, above);
    }

    /** Number of bands. */
    public int count() {
        return inside + below + above;
    }

    /** Share of the bands that hold the truth [1]. */
    public double share() {
        return (double) inside / count();
    }
}
