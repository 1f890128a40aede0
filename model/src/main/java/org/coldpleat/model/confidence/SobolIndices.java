package org.coldpleat.model.confidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.source.Source;

/**
 * Shares of the variance of an answer by group of unknowns, with their sampling errors. An answer that does not vary at
 * all has no shares to give: they are 0. If no draw gave an answer the variance is {@code NaN}.
 *
 * @param variance variance of the answer [SI squared]
 * @param shares one entry a group that spreads, in the order of first appearance
 * @param evaluations number of model evaluations used
 * @param discarded draws left out because some evaluation gave no answer
 */
public record SobolIndices(double variance, List<Share> shares, int evaluations, int discarded) {
    private static final int RESAMPLES = 200;

    public SobolIndices {
        shares = List.copyOf(shares);
    }

    /**
     * Part of one group.
     *
     * @param group label of the group
     * @param first share explained by the group alone [1]
     * @param firstError standard sampling error of {@code first} [1]
     * @param total share that would remain if all else were known [1]
     * @param totalError standard sampling error of {@code total} [1]
     */
    public record Share(String group, double first, double firstError, double total, double totalError) {}

    /**
     * Estimates the indices by pick and freeze.
     *
     * @param model function from values to answers
     * @param answer which answer, and the stretch that matters
     * @param unknowns independent unknowns
     * @param draws rows of the base matrices, at least 16; a power of two is best. The model is evaluated draws times
     *     (groups + 2)
     * @param seed fixes draws and resampling
     * @param progress told of the advance; may cancel
     * @return indices, or nothing if cancelled
     */
    @Source("Jansen 1999, Comput. Phys. Commun. 117:35 (both estimators); Saltelli et al. 2010, Comput. Phys. Commun."
            + " 181:259, table 2 (b, f)")
    public static Optional<SobolIndices> estimate(
            Model model, Answer answer, List<UncertainQuantity> unknowns, int draws, long seed, Progress progress) {
        List<UncertainQuantity> ordered = Propagation.checked(unknowns);
        if (draws < 16) {
            throw new IllegalArgumentException("draws must be at least 16, was " + draws);
        }
        List<String> groups = ordered.stream()
                .filter(UncertainQuantity::spreads)
                .map(UncertainQuantity::group)
                .distinct()
                .toList();
        int size = ordered.size();
        SobolDraws sequence = new SobolDraws(2 * size, seed);
        return Evaluations.run(draws, i -> row(model.inRow(), answer, ordered, groups, sequence.point(i)), progress)
                .map(rows -> summarize(rows, groups, seed));
    }

    private static double[] row(
            Model model, Answer answer, List<UncertainQuantity> unknowns, List<String> groups, double[] point) {
        int size = unknowns.size();
        double[] pointA = java.util.Arrays.copyOfRange(point, 0, size);
        double[] pointB = java.util.Arrays.copyOfRange(point, size, 2 * size);
        double[] a = Propagation.values(unknowns, pointA);
        double[] b = Propagation.values(unknowns, pointB);
        double[] row = new double[groups.size() + 2];
        row[0] = answer.of(model.answers(a.clone()));
        row[1] = answer.of(model.answers(b.clone()));
        for (int g = 0; g < groups.size(); g++) {
            double[] mixed = a.clone();
            for (int j = 0; j < size; j++) {
                if (unknowns.get(j).group().equals(groups.get(g))) {
                    mixed[j] = b[j];
                }
            }
            row[g + 2] = answer.of(model.answers(mixed));
        }
        return row;
    }

    private static SobolIndices summarize(double[][] rows, List<String> groups, long seed) {
        List<double[]> kept = new ArrayList<>();
        for (double[] row : rows) {
            boolean complete = true;
            for (double value : row) {
                complete &= !Double.isNaN(value);
            }
            if (complete) {
                kept.add(row);
            }
        }
        int count = kept.size();
        int[] all = new int[count];
        for (int i = 0; i < count; i++) {
            all[i] = i;
        }
        double[] best = indices(kept, all, groups.size());
        double[] sum = new double[best.length];
        double[] squares = new double[best.length];
        SplittableRandom random = new SplittableRandom(seed);
        for (int r = 0; r < RESAMPLES; r++) {
            int[] picked = new int[count];
            for (int i = 0; i < count; i++) {
                picked[i] = count == 0 ? 0 : random.nextInt(count);
            }
            double[] again = indices(kept, picked, groups.size());
            for (int k = 0; k < best.length; k++) {
                sum[k] += again[k] - best[k];
                squares[k] += (again[k] - best[k]) * (again[k] - best[k]);
            }
        }
        double[] error = new double[best.length];
        for (int k = 0; k < best.length; k++) {
            double mean = sum[k] / RESAMPLES;
            error[k] = Math.sqrt(Math.max(0, squares[k] / RESAMPLES - mean * mean));
        }
        List<Share> shares = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int k = 1 + 2 * g;
            shares.add(new Share(groups.get(g), best[k], error[k], best[k + 1], error[k + 1]));
        }
        return new SobolIndices(best[0], shares, rows.length * (groups.size() + 2), rows.length - count);
    }

    /** Variance below which an answer counts as the same in all draws, over its square [1]. */
    private static final double ROUNDING = 1e-20;

    /** Variance, then first and total index of each group; not a number where a group moves what else does not vary. */
    private static double[] indices(List<double[]> rows, int[] picked, int groups) {
        double mean = 0;
        for (int i : picked) {
            mean += rows.get(i)[0] + rows.get(i)[1];
        }
        mean /= 2.0 * picked.length;
        double variance = 0;
        double[] result = new double[1 + 2 * groups];
        for (int i : picked) {
            double[] row = rows.get(i);
            variance += (row[0] - mean) * (row[0] - mean) + (row[1] - mean) * (row[1] - mean);
            for (int g = 0; g < groups; g++) {
                double toA = row[0] - row[g + 2];
                double toB = row[1] - row[g + 2];
                result[1 + 2 * g] += toB * toB;
                result[2 + 2 * g] += toA * toA;
            }
        }
        variance /= 2.0 * picked.length;
        boolean flat = !(variance > ROUNDING * Math.max(1, mean * mean));
        for (int g = 0; g < groups; g++) {
            double moved = result[1 + 2 * g] + result[2 + 2 * g];
            double whole = 2 * picked.length * variance;
            result[1 + 2 * g] = !flat ? 1 - result[1 + 2 * g] / whole : moved == 0 ? 0 : Double.NaN;
            result[2 + 2 * g] = !flat ? result[2 + 2 * g] / whole : moved == 0 ? 0 : Double.NaN;
        }
        result[0] = variance;
        return result;
    }
}
