package org.coldpleat.model.certainty.draw;

import java.util.Arrays;
import org.coldpleat.shared.source.Source;

/**
 * What an answer may turn out to be: the drawn values in order. Values of minus and plus infinity (never, always) take
 * part as the ends of the order, so everything is said with quantiles and shares, never with means. If no draw gave an
 * answer, {@link #count} is 0 and every number is {@code NaN}.
 */
public final class Outcomes {
    private final double[] sorted;
    private final int unanswered;

    private Outcomes(double[] sorted, int unanswered) {
        this.sorted = sorted;
        this.unanswered = unanswered;
    }

    /** Outcomes of drawn values; {@code NaN} values are counted apart. */
    public static Outcomes of(double[] drawn) {
        double[] answered =
                Arrays.stream(drawn).filter(v -> !Double.isNaN(v)).sorted().toArray();
        return new Outcomes(answered, drawn.length - answered.length);
    }

    /** Number of draws with an answer. */
    public int count() {
        return sorted.length;
    }

    /** Number of draws without an answer. */
    public int unanswered() {
        return unanswered;
    }

    /**
     * Quantile, linear between neighboring draws; where a neighbor is infinite the nearer of the two.
     *
     * @param probability share of the draws below [1], 0 to 1
     */
    public double quantile(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability must be 0 to 1, was " + probability);
        }
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = Math.max(0, Math.min(sorted.length - 1.0, probability * sorted.length - 0.5));
        int below = (int) place;
        int above = Math.min(sorted.length - 1, below + 1);
        double share = place - below;
        if (Double.isInfinite(sorted[below]) || Double.isInfinite(sorted[above])) {
            return share < 0.5 ? sorted[below] : sorted[above];
        }
        return sorted[below] + share * (sorted[above] - sorted[below]);
    }

    /** Middle value: as many draws below as above. */
    public double median() {
        return quantile(0.5);
    }

    /** Lower end of the 95 % band with equal tails. */
    public double low() {
        return quantile(0.025);
    }

    /** Upper end of the 95 % band with equal tails. */
    public double high() {
        return quantile(0.975);
    }

    /** Share of the draws in which the answer is minus infinity, never [1]. */
    public double never() {
        return below(Double.NEGATIVE_INFINITY, true);
    }

    /** Share of the draws in which the answer is plus infinity, always [1]. */
    public double always() {
        return 1 - below(Double.POSITIVE_INFINITY, false);
    }

    /** Share of the draws above a limit [1]. */
    public double probabilityAbove(double limit) {
        return 1 - below(limit, true);
    }

    /**
     * Shortest interval that holds a share of the draws, for a finite skew answer.
     *
     * @param coverage share inside [1], between 0 and 1
     * @return lower and upper end
     */
    @Source("JCGM 101:2008, 7.7.2 and 5.3.4")
    public double[] shortestInterval(double coverage) {
        int inside = (int) Math.round(coverage * sorted.length);
        if (inside < 1 || inside >= sorted.length) {
            throw new IllegalArgumentException(
                    "coverage " + coverage + " cannot be resolved with " + sorted.length + " draws");
        }
        int best = 0;
        for (int i = 1; i + inside < sorted.length; i++) {
            if (sorted[i + inside] - sorted[i] < sorted[best + inside] - sorted[best]) {
                best = i;
            }
        }
        return new double[] {sorted[best], sorted[best + inside]};
    }

    /** Standard deviation of the draws, defined only if all are finite; else {@code NaN}. */
    public double standardDeviation() {
        double mean = Arrays.stream(sorted).average().orElse(Double.NaN);
        double squares = Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (sorted.length - 1));
    }

    private double below(double limit, boolean inclusive) {
        long count = Arrays.stream(sorted)
                .filter(v -> inclusive ? v <= limit : v < limit)
                .count();
        return (double) count / sorted.length;
    }
}
