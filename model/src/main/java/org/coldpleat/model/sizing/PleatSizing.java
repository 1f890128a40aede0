package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.shared.source.Source;

/**
 * Sizes the pleat count. More pleats bring more medium, until their channels grow so narrow that the pack resists more
 * again: the curve has an optimum, and a target may be met between two counts, or by none.
 */
@Source("derived here: a count meets a target where its pack resists no more than the target allows")
final class PleatSizing {
    /** Least and greatest count of a case file [1]. */
    private static final int LEAST = 4;

    private static final int GREATEST = 400;

    /** Counts looked at reach so far from the present one [1]. */
    private static final double DOWN = 0.1;

    private static final double UP = 2.2;
    private static final int OPTIONS = 40;

    /** Counts from one solved pack of a draw to the next; between them ln R is taken as straight, good to 0.1 %. */
    private static final int DRAWN_STEP = 3;

    private final TargetTrials trials;
    private final Design design;
    private final int first;
    private final int last;
    private final double[] resistance;
    private final double allowed;
    private final Status unresolved;

    PleatSizing(TargetTrials trials, Lever lever, Design design) {
        this.trials = trials;
        this.design = design;
        double now = design.pleats().orElseThrow();
        first = Math.max(LEAST, (int) Math.round(DOWN * now));
        last = Math.min(GREATEST, (int) Math.round(UP * now));
        resistance = resistances(design, 1);
        Search.Found found = trials.search(design, lever);
        OptionalDouble move = found.nearest(0);
        boolean none = move.isEmpty() && (found.unanswered() > 0 || Double.isNaN(found.greatest()));
        unresolved = none ? Status.UNRESOLVED : Status.FOUND;
        double end = found.greatest() >= 0 ? Double.POSITIVE_INFINITY : 0;
        allowed = move.isPresent() ? design.packResistance() * lever.factor(move.getAsDouble()) : end;
    }

    /** Move of the pack resistance at which the best estimate begins to meet the target; start for the draws. */
    double move(Lever lever) {
        return allowed > 0 && Double.isFinite(allowed)
                ? lever.direction() * Math.log(allowed / design.packResistance())
                : 0;
    }

    private static Design withPleats(Design of, int count) {
        return of.changed(change -> change.withPleats(count));
    }

    /** Resistances of the pack by count, solved at every so many counts and drawn between them in their logarithms. */
    private double[] resistances(Design of, int step) {
        double[] found = new double[last - first + 1];
        found[0] = withPleats(of, first).packResistance();
        for (int i = 0; i + 1 < found.length; ) {
            int next = Math.min(i + step, found.length - 1);
            found[next] = withPleats(of, first + next).packResistance();
            for (int j = i + 1; j < next; j++) {
                double share = (double) (j - i) / (next - i);
                found[j] = found[i] * Math.pow(found[next] / found[i], share);
            }
            i = next;
        }
        return found;
    }

    /** Which counts of a draw meet the target: 1 or 0 each, from the move at which its pack begins to meet it. */
    double[] met(Optional<Design> draw, Lever lever, double critical) {
        double[] met = new double[last - first + 1];
        if (draw.isEmpty() || Double.isNaN(critical)) {
            return met;
        }
        double limit = critical == Double.NEGATIVE_INFINITY
                ? Double.MAX_VALUE
                : draw.get().packResistance() * lever.factor(critical);
        double[] pack = resistances(draw.get(), DRAWN_STEP);
        for (int i = 0; i < met.length; i++) {
            met[i] = pack[i] <= limit ? 1 : 0;
        }
        return met;
    }

    /** Share of draws that meet the target, by count. */
    double[] chances(double[][] met) {
        double[] chances = new double[last - first + 1];
        for (double[] draw : met) {
            for (int i = 0; i < chances.length; i++) {
                chances[i] += draw[i] / met.length;
            }
        }
        return chances;
    }

    /** Count whose pack resists least. */
    int optimum() {
        int best = 0;
        for (int i = 1; i < resistance.length; i++) {
            best = resistance[i] < resistance[best] ? i : best;
        }
        return first + best;
    }

    private boolean isMet(int i) {
        return resistance[i] <= allowed * (1 + 1e-9);
    }

    Answer best(double[] chances) {
        if (unresolved == Status.UNRESOLVED) {
            return answer(Status.UNRESOLVED, optimum(), chances);
        }
        boolean all = true;
        int least = -1;
        for (int i = resistance.length - 1; i >= 0; i--) {
            all &= isMet(i);
            least = isMet(i) ? i : least;
        }
        return all
                ? answer(Status.ALWAYS, first, chances)
                : answer(least < 0 ? Status.NEVER : Status.FOUND, least < 0 ? optimum() : first + least, chances);
    }

    /** Least count that meets the target with a chance; else the count that comes nearest. */
    Answer sure(double[] chances, double chance) {
        int most = 0;
        for (int i = 0; i < chances.length; i++) {
            if (chances[i] >= chance) {
                boolean all = Arrays.stream(chances).allMatch(one -> one >= chance);
                return answer(all ? Status.ALWAYS : Status.FOUND, first + i, chances);
            }
            most = chances[i] > chances[most] ? i : most;
        }
        return answer(Status.NEVER, first + most, chances);
    }

    private Answer answer(Status status, int count, double[] chances) {
        boolean is = status == Status.FOUND;
        boolean none = status == Status.NEVER;
        double opening = trials.opening(withPleats(design, count));
        return new Answer(
                status,
                "",
                is ? count : Double.NaN,
                is ? opening : Double.NaN,
                chances[count - first],
                none ? count : Double.NaN,
                "",
                none ? opening : Double.NaN);
    }

    /** The counts that meet the target in the middle of the draws and at the ends of the band, each the least one. */
    Quantiles band(double[][] met) {
        double[] least = new double[met.length];
        for (int d = 0; d < met.length; d++) {
            least[d] = Double.POSITIVE_INFINITY;
            for (int i = met[d].length - 1; i >= 0; i--) {
                least[d] = met[d][i] > 0 ? first + i : least[d];
            }
        }
        Criticals counts = new Criticals(least);
        return new Quantiles(counts.atChance(0.5), counts.atChance(0.025), counts.atChance(0.975));
    }

    double low() {
        return first;
    }

    double high() {
        return last;
    }

    List<Option> options(double[] chances) {
        List<Option> options = new ArrayList<>();
        int step = Math.max(1, (last - first) / OPTIONS);
        for (int i = 0; i < resistance.length; i++) {
            boolean shown = i % step == 0 || first + i == (int) design.pleats().orElseThrow();
            if (shown || first + i == optimum()) {
                Design moved = withPleats(design, first + i);
                options.add(new Option(
                        "",
                        first + i,
                        trials.opening(moved),
                        isMet(i),
                        chances[i],
                        resistance[i],
                        moved.crowdedShare()));
            }
        }
        return options;
    }
}
