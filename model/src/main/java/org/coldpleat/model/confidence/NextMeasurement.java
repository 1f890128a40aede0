package org.coldpleat.model.confidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.numerics.StandardNormal;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.source.Source;

/**
 * Which further measurement would narrow an answer most. Each group of unknowns may have an achievable share: the ratio
 * of the uncertainty a better measurement would leave to the present one. The spread to expect after the measurement is
 * averaged over what the measurement may show.
 */
public final class NextMeasurement {
    private NextMeasurement() {}

    /**
     * What one measurement would bring.
     *
     * @param group group of unknowns measured
     * @param remaining ratio of the uncertainty afterward to the one now, root mean square over the group [1]
     * @param spreadNow standard deviation of the answer now [SI]
     * @param spreadAfter root of the expected variance after the measurement [SI]
     * @param error standard sampling error of {@code spreadNow - spreadAfter} [SI]
     */
    public record Gain(String group, double remaining, double spreadNow, double spreadAfter, double error) {
        /** Expected reduction of the standard deviation [SI]; may be slightly negative by sampling. */
        public double reduction() {
            return spreadNow - spreadAfter;
        }
    }

    /**
     * Ranks the measurements, most useful first.
     *
     * <p>Before the measurement an unknown is drawn from its distribution; in terms of its normal score the measurement
     * splits that score into what will be known and what stays: {@code z = sqrt(1 - r^2) known + r rest}. Two draws
     * that share only the known part differ by twice the expected remaining variance.
     *
     * @param model function from values to answers
     * @param answer which answer, and the stretch that matters
     * @param unknowns independent unknowns
     * @param remaining by name of the unknown, or by its group for all of it: uncertainty after the measurement over that
     *     now [1], 0 (then exact) to 1; groups of which nothing is named are not considered
     * @param draws number of draws, at least 16; the model is evaluated draws times (measurements + 2)
     * @param seed fixes the draws
     * @param progress told of the advance; may cancel
     * @return gains, the greatest reduction first, or nothing if cancelled
     */
    @Source("law of total variance; pick-freeze estimate of a conditional variance as in Jansen 1999, Comput. Phys."
            + " Commun. 117:35; split of the score derived here")
    public static Optional<List<Gain>> rank(
            Model model,
            Answer answer,
            List<UncertainQuantity> unknowns,
            Map<String, Double> remaining,
            int draws,
            long seed,
            Progress progress) {
        List<UncertainQuantity> ordered = Propagation.checked(unknowns);
        List<String> groups = ordered.stream()
                .filter(UncertainQuantity::spreads)
                .filter(one -> remaining.containsKey(one.name()) || remaining.containsKey(one.group()))
                .map(UncertainQuantity::group)
                .distinct()
                .toList();
        for (String group : remaining.keySet()) {
            double ratio = remaining.get(group);
            if (!(ratio >= 0 && ratio <= 1)) {
                throw new IllegalArgumentException("remaining of " + group + " must be 0 to 1, was " + ratio);
            }
        }
        if (draws < 16) {
            throw new IllegalArgumentException("draws must be at least 16, was " + draws);
        }
        SobolDraws sequence = new SobolDraws(2 * ordered.size(), seed);
        return Evaluations.run(
                        draws, i -> row(model.inRow(), answer, ordered, groups, remaining, sequence.point(i)), progress)
                .map(rows -> gains(rows, groups, ordered, remaining));
    }

    private static double[] row(
            Model model,
            Answer answer,
            List<UncertainQuantity> unknowns,
            List<String> groups,
            Map<String, Double> remaining,
            double[] point) {
        int size = unknowns.size();
        double[] a = new double[size];
        double[] b = new double[size];
        for (int j = 0; j < size; j++) {
            a[j] = unknowns.get(j).quantile(point[j]);
            b[j] = unknowns.get(j).quantile(point[size + j]);
        }
        double[] row = new double[groups.size() + 2];
        row[0] = answer.of(model.answers(a.clone()));
        row[1] = answer.of(model.answers(b.clone()));
        for (int g = 0; g < groups.size(); g++) {
            double[] after = b.clone();
            for (int j = 0; j < size; j++) {
                if (unknowns.get(j).group().equals(groups.get(g))) {
                    double ratio = ratio(unknowns.get(j), remaining);
                    double known = 1 - ratio * ratio;
                    double score = known * StandardNormal.score(point[j])
                            + Math.sqrt(1 - known * known) * StandardNormal.score(point[size + j]);
                    after[j] = unknowns.get(j).quantile(inside(StandardNormal.probability(score)));
                }
            }
            row[g + 2] = answer.of(model.answers(after));
        }
        return row;
    }

    /** Keeps a probability off 0 and 1, which rounding may reach beyond 8 standard deviations. */
    private static double inside(double probability) {
        return Math.max(Double.MIN_NORMAL, Math.min(Math.nextDown(1.0), probability));
    }

    /** Of an unknown: its own, else that of its group; 1 where nothing is named. */
    private static double ratio(UncertainQuantity unknown, Map<String, Double> remaining) {
        return remaining.getOrDefault(unknown.name(), remaining.getOrDefault(unknown.group(), 1.0));
    }

    /** Of a group: its unknowns in the root mean square. */
    private static double ratio(String group, List<UncertainQuantity> unknowns, Map<String, Double> remaining) {
        return Math.sqrt(unknowns.stream()
                .filter(one -> one.spreads() && one.group().equals(group))
                .mapToDouble(one -> Math.pow(ratio(one, remaining), 2))
                .average()
                .orElse(1));
    }

    private static List<Gain> gains(
            double[][] rows, List<String> groups, List<UncertainQuantity> unknowns, Map<String, Double> remaining) {
        List<Gain> gains = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            double now = 0;
            double after = 0;
            double squares = 0;
            int count = 0;
            for (double[] row : rows) {
                double free = (row[0] - row[1]) * (row[0] - row[1]) / 2;
                double tied = (row[0] - row[g + 2]) * (row[0] - row[g + 2]) / 2;
                if (!Double.isNaN(free + tied)) {
                    now += free;
                    after += tied;
                    squares += (free - tied) * (free - tied);
                    count++;
                }
            }
            now /= count;
            after /= count;
            double mean = now - after;
            double error = Math.sqrt(Math.max(0, squares / count - mean * mean) / count);
            double spread = Math.sqrt(now) + Math.sqrt(after);
            gains.add(new Gain(
                    groups.get(g),
                    ratio(groups.get(g), unknowns, remaining),
                    Math.sqrt(now),
                    Math.sqrt(after),
                    spread > 0 ? error / spread : 0));
        }
        gains.sort(Comparator.comparingDouble(Gain::reduction).reversed());
        return gains;
    }
}
