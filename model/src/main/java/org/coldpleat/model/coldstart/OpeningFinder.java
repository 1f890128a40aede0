package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.numerics.GoldenSection;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Finds every interval of temperature in which a bypass valve is open. Looks at a grid; splits any cell in which the curve
 * could still cross the limit, judged by its steepness next door; follows every highest point below the limit and every
 * lowest point above it to its extremum; then closes in on each crossing.
 *
 * @param low lowest temperature [K]
 * @param high highest temperature [K], above low
 * @param gridStep first step [K], above 0
 * @param finestStep cells are not split below this width [K], above 0
 * @param tolerance of the interval ends [K], above 0
 */
@Source("derived here: grid, slope-guided bisection, golden section, Illinois variant of regula falsi")
@Validity("finds intervals and gaps as wide as finestStep where the ratio comes within its local slope of 1; a spike "
        + "narrower than the grid on a flat curve far from 1 would be missed")
public record OpeningFinder(double low, double high, double gridStep, double finestStep, double tolerance) {
    private static final double STEEPER = 2;

    /** Below this change of the ratio [1] a cell is flat to rounding. */
    private static final double SMALLEST_REACH = 1e-9;

    /** Accuracy of the greatest ratio, relative [1]. */
    private static final double TOP_ACCURACY = 1e-3;

    /** Peaks above this share of the highest grid point are followed for the greatest ratio [1]. */
    private static final double NEARLY_TOP = 0.95;

    /** Difference across the valve over its opening pressure, as a function of temperature. */
    @FunctionalInterface
    public interface Ratio {
        /** The ratio [1] at a temperature [K]; above 1 is open, NaN is no answer. */
        double at(double temperature);
    }

    public OpeningFinder {
        Require.positive("low", low, "K");
        Require.positive("high minus low", high - low, "K");
        Require.positive("gridStep", gridStep, "K");
        Require.positive("finestStep", finestStep, "K");
        Require.positive("tolerance", tolerance, "K");
    }

    /** From -40 to 150 C, the range of the oil laws: steps of 4 K, split down to 0.1 K, ends to 1 mK. */
    public static OpeningFinder overOilRange() {
        return new OpeningFinder(233.15, 423.15, 4, 0.1, 1e-3);
    }

    /** Finds all openings of a valve. */
    public OpenTemperatures find(Ratio ratio) {
        Search search = new Search(ratio);
        search.lookAtGrid();
        search.splitDoubtfulCells();
        search.followExtrema();
        return search.answer();
    }

    /** One search: the points looked at so far. */
    private final class Search {
        private final Ratio ratio;
        private final TreeMap<Double, Double> points = new TreeMap<>();
        private int evaluations;
        private int unresolved;

        Search(Ratio ratio) {
            this.ratio = ratio;
        }

        private double look(double temperature) {
            double value = count(temperature);
            if (!Double.isNaN(value)) {
                points.put(temperature, value);
            }
            return value;
        }

        void lookAtGrid() {
            int cells = (int) Math.ceil((high - low) / gridStep);
            for (int i = cells; i >= 0; i--) {
                look(low + (high - low) * i / cells);
            }
        }

        void splitDoubtfulCells() {
            boolean split = true;
            while (split) {
                split = false;
                List<Double> middles = new ArrayList<>();
                double[] t = keys();
                double[] v = values();
                double top = Arrays.stream(v).max().orElse(0);
                for (int i = 0; i + 1 < t.length; i++) {
                    if (t[i + 1] - t[i] > finestStep && isDoubtful(t, v, i, top)) {
                        middles.add(0.5 * (t[i] + t[i + 1]));
                    }
                }
                for (double middle : middles) {
                    split |= !Double.isNaN(look(middle));
                }
            }
        }

        /**
         * A cell is in doubt when a curve a few times as steep as its surroundings could reach 0, or rise above the highest
         * point, and return within it. Cells with a crossing are in doubt too, since they may hold three.
         */
        private boolean isDoubtful(double[] t, double[] v, int cell, double top) {
            double left = v[cell];
            double right = v[cell + 1];
            double reach = STEEPER * steepnessAround(t, v, cell) * (t[cell + 1] - t[cell]);
            boolean crossing = left > 0 != right > 0;
            boolean touching = Math.abs(left) + Math.abs(right) < reach && reach > SMALLEST_REACH;
            boolean rising = 2 * top - left - right < reach && reach > TOP_ACCURACY * (top + 1);
            return crossing || touching || rising;
        }

        private double steepnessAround(double[] t, double[] v, int cell) {
            double steepest = 0;
            for (int j = Math.max(0, cell - 1); j <= Math.min(t.length - 2, cell + 1); j++) {
                steepest = Math.max(steepest, Math.abs(v[j + 1] - v[j]) / (t[j + 1] - t[j]));
            }
            return steepest;
        }

        void followExtrema() {
            double[] t = keys();
            double[] v = values();
            double top = Double.NEGATIVE_INFINITY;
            for (double value : v) {
                top = Math.max(top, value);
            }
            for (int i = 1; i + 1 < t.length; i++) {
                boolean highest = v[i] >= v[i - 1] && v[i] >= v[i + 1];
                boolean lowest = v[i] <= v[i - 1] && v[i] <= v[i + 1];
                if (highest && (v[i] <= 0 || v[i] + 1 > NEARLY_TOP * (top + 1))) {
                    golden(t[i - 1], t[i], t[i + 1], v[i], 1);
                } else if (lowest && v[i] > 0) {
                    golden(t[i - 1], t[i], t[i + 1], v[i], -1);
                }
            }
        }

        /** Golden section for the maximum of sign times value; stops once the limit is crossed. */
        private void golden(double left, double middle, double right, double value, int sign) {
            double known = sign * value;
            double enough = known > 0 ? Double.POSITIVE_INFINITY : 0;
            GoldenSection.climb(x -> sign * look(x), left, middle, right, known, 0.2 * finestStep, enough);
        }

        OpenTemperatures answer() {
            double[] t = keys();
            double[] v = values();
            List<OpenTemperatures.Interval> intervals = new ArrayList<>();
            double start = Double.NaN;
            for (int i = 0; i < t.length; i++) {
                boolean open = v[i] > 0;
                boolean wasOpen = !Double.isNaN(start);
                if (open && !wasOpen) {
                    start = i == 0 ? t[0] : crossing(t[i - 1], v[i - 1], t[i], v[i]);
                } else if (!open && wasOpen) {
                    intervals.add(new OpenTemperatures.Interval(start, crossing(t[i - 1], v[i - 1], t[i], v[i])));
                    start = Double.NaN;
                }
            }
            if (!Double.isNaN(start)) {
                intervals.add(new OpenTemperatures.Interval(start, t[t.length - 1]));
            }
            Map.Entry<Double, Double> top = greatest();
            return new OpenTemperatures(
                    kind(intervals, t),
                    intervals,
                    low,
                    high,
                    top == null ? Double.NaN : top.getValue() + 1,
                    top == null ? Double.NaN : top.getKey(),
                    evaluations,
                    unresolved);
        }

        private OpenTemperatures.Kind kind(List<OpenTemperatures.Interval> intervals, double[] t) {
            if (t.length == 0) {
                return OpenTemperatures.Kind.UNKNOWN;
            }
            if (intervals.isEmpty()) {
                return OpenTemperatures.Kind.NEVER;
            }
            OpenTemperatures.Interval first = intervals.get(0);
            boolean coldHalf = intervals.size() == 1 && first.low() == t[0];
            if (coldHalf && first.high() == t[t.length - 1]) {
                return OpenTemperatures.Kind.ALWAYS;
            }
            return coldHalf ? OpenTemperatures.Kind.BELOW : OpenTemperatures.Kind.INTERVALS;
        }

        /** Crossing between a point that is open and one that is not. */
        private double crossing(double left, double atLeft, double right, double atRight) {
            return BracketedRoot.illinois(
                    this::count, left, atLeft, right, atRight, BracketedRoot.Stop.atWidth(tolerance));
        }

        private double count(double temperature) {
            double value = ratio.at(temperature) - 1;
            evaluations++;
            if (Double.isNaN(value)) {
                unresolved++;
            }
            return value;
        }

        private Map.Entry<Double, Double> greatest() {
            return points.entrySet().stream().max(Map.Entry.comparingByValue()).orElse(null);
        }

        private double[] keys() {
            return points.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        }

        private double[] values() {
            return points.values().stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
