package org.coldpleat.model.certainty.draw;

import org.coldpleat.shared.source.Source;

/**
 * How often one answer exceeds another over common draws.
 *
 * @param greater share of the draws in which the first is greater [1]
 * @param equal share in which both are equal, as when neither valve ever opens [1]
 * @param less share in which the first is less [1]
 */
public record Pair(double greater, double equal, double less) {
    /** Limit of the shares above which two answers count as separated. */
    @Source("common practice, no source: the 95 % of the coverage interval")
    private static final double SEPARATED = 0.95;

    /**
     * Compares draw by draw.
     *
     * @param first answers of one candidate
     * @param second answers of the other, from the same draws in the same order
     */
    public static Pair compare(double[] first, double[] second) {
        if (first.length != second.length || first.length == 0) {
            throw new IllegalArgumentException(
                    "both candidates need the same draws, had " + first.length + " and " + second.length);
        }
        int greater = 0;
        int less = 0;
        int answered = 0;
        for (int i = 0; i < first.length; i++) {
            if (Double.isNaN(first[i]) || Double.isNaN(second[i])) {
                continue;
            }
            answered++;
            if (first[i] > second[i]) {
                greater++;
            } else if (first[i] < second[i]) {
                less++;
            }
        }
        double n = answered;
        return answered == 0
                ? new Pair(Double.NaN, Double.NaN, Double.NaN)
                : new Pair(greater / n, (answered - greater - less) / n, less / n);
    }

    /** True if the data tell the two apart with 95 % probability. */
    public boolean separated() {
        return greater >= SEPARATED || less >= SEPARATED;
    }
}
