package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.shared.source.Source;

/**
 * Looks for the places at which a curve passes 0. The curve need not be monotone; two crossings in one cell of the first
 * look stay unseen.
 *
 * @param low lower end
 * @param high upper end, above low
 * @param cells of the first look, at least 1
 * @param tolerance of a crossing, above 0
 */
@Source("bracketing by a first look, derived here")
record Search(double low, double high, int cells, double tolerance) {
    /**
     * What was found.
     *
     * @param crossings where the curve passes 0, from low to high
     * @param atLow value at the lower end; NaN without an answer
     * @param atHigh value at the upper end; NaN without an answer
     * @param greatest greatest value of the first look; NaN if there was no answer anywhere
     * @param greatestAt where that is
     * @param unanswered places of the first look without an answer
     */
    record Found(
            List<Double> crossings, double atLow, double atHigh, double greatest, double greatestAt, int unanswered) {
        Found {
            crossings = List.copyOf(crossings);
        }

        /** The crossing nearest to a place. */
        OptionalDouble nearest(double place) {
            return crossings.stream()
                    .min(Comparator.comparingDouble(one -> Math.abs(one - place)))
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty());
        }
    }

    /** Looks at the whole stretch. */
    Found find(DoubleUnaryOperator curve) {
        List<Double> crossings = new ArrayList<>();
        double[] values = new double[cells + 1];
        double greatest = Double.NaN;
        double greatestAt = Double.NaN;
        int unanswered = 0;
        for (int i = 0; i <= cells; i++) {
            values[i] = curve.applyAsDouble(place(i));
            if (Double.isNaN(values[i])) {
                unanswered++;
                continue;
            }
            if (!(values[i] <= greatest)) {
                greatest = values[i];
                greatestAt = place(i);
            }
            if (i > 0 && !Double.isNaN(values[i - 1]) && values[i - 1] >= 0 != values[i] >= 0) {
                BracketedRoot.brent(curve, place(i - 1), place(i), tolerance).ifPresent(crossings::add);
            }
        }
        return new Found(crossings, values[0], values[cells], greatest, greatestAt, unanswered);
    }

    private double place(int i) {
        return low + (high - low) * i / cells;
    }

    /**
     * The crossing next to a place, looked for outward from it in growing steps.
     *
     * @param rising true if the curve is below 0 at the lower side of the crossing
     * @return the crossing; negative infinity if it lies below the stretch, positive infinity if above, NaN without an
     *     answer
     */
    double near(DoubleUnaryOperator curve, double place, double step, boolean rising) {
        double value = curve.applyAsDouble(place);
        double at = place;
        double reach = step;
        while (!Double.isNaN(value)) {
            boolean upward = value < 0 == rising;
            double next = Math.max(low, Math.min(high, upward ? at + reach : at - reach));
            if (next == at) {
                return upward ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
            }
            double there = curve.applyAsDouble(next);
            if (Double.isNaN(there)) {
                return Double.NaN;
            }
            if (there >= 0 != value >= 0) {
                return BracketedRoot.brent(curve, Math.min(at, next), Math.max(at, next), tolerance)
                        .orElse(Double.NaN);
            }
            at = next;
            value = there;
            reach *= 2;
        }
        return Double.NaN;
    }
}
