package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.TypicalOils;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.model.sizing.SizingResult.Status;

/**
 * Tries the typical oil of each viscosity grade. The answer is the thickest oil, at the temperature of the target, that
 * still meets it: thinner ones meet it too, and the engine maker says which hot grade may be used.
 */
final class GradeSizing {
    private final TargetTrials trials;
    private final Design design;
    private final List<Grade> grades;

    /** A grade with its typical oil. */
    private record Grade(String label, Oil oil, double viscosity) {}

    GradeSizing(TargetTrials trials, Design design, double temperature) {
        this.trials = trials;
        this.design = design;
        List<Grade> all = new ArrayList<>();
        for (TypicalOil row : TypicalOils.all()) {
            SaeGrade.parse(row.grade()).ifPresent(grade -> {
                Oil oil = Design.typicalOil(grade);
                all.add(new Grade(
                        written(grade),
                        oil,
                        design.changed(change -> change.withOil(oil)).viscosity(temperature)));
            });
        }
        all.sort(Comparator.comparingDouble(Grade::viscosity));
        grades = List.copyOf(all);
    }

    /** A grade without a winter half as the trade writes it. */
    private static String written(SaeGrade grade) {
        return grade.winter().isPresent() ? grade.label() : "SAE " + grade.label();
    }

    /**
     * Which grades meet the target in a draw: 1 or 0 each. On its way from the temperature of the target upward a thinner
     * oil goes through a part of the viscosities that a thicker one goes through, so it meets the target too.
     */
    double[] met(Optional<Design> draw) {
        double[] met = new double[grades.size()];
        if (draw.isEmpty()) {
            return met;
        }
        int below = 0;
        int from = grades.size();
        while (below < from) {
            int middle = (below + from) / 2;
            if (trials.meets(moved(draw.get(), middle))) {
                below = middle + 1;
            } else {
                from = middle;
            }
        }
        Arrays.fill(met, 0, below, 1);
        return met;
    }

    /** Share of draws that meet the target, by grade. */
    double[] chances(double[][] met) {
        double[] chances = new double[grades.size()];
        for (double[] draw : met) {
            for (int i = 0; i < chances.length; i++) {
                chances[i] += draw[i] / met.length;
            }
        }
        return chances;
    }

    Answer best(double[] chances) {
        boolean[] holds = new boolean[grades.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = trials.meets(moved(i));
        }
        return thickest(holds, chances);
    }

    Answer sure(double[] chances, double chance) {
        boolean[] holds = new boolean[grades.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = chances[i] >= chance;
        }
        return thickest(holds, chances);
    }

    private Answer thickest(boolean[] holds, double[] chances) {
        int thickest = -1;
        boolean all = true;
        int likely = 0;
        for (int i = 0; i < holds.length; i++) {
            thickest = holds[i] ? i : thickest;
            all &= holds[i];
            likely = chances[i] > chances[likely] ? i : likely;
        }
        Status status = all ? Status.ALWAYS : thickest < 0 ? Status.NEVER : Status.FOUND;
        int at = thickest < 0 ? likely : thickest;
        boolean is = status == Status.FOUND;
        boolean none = status == Status.NEVER;
        double opening = trials.opening(moved(at));
        return new Answer(
                status,
                is ? grades.get(at).label() : "",
                is ? grades.get(at).viscosity() : Double.NaN,
                is ? opening : Double.NaN,
                chances[at],
                none ? grades.get(at).viscosity() : Double.NaN,
                none ? grades.get(at).label() : "",
                none ? opening : Double.NaN);
    }

    private Design moved(int i) {
        return moved(design, i);
    }

    private Design moved(Design from, int i) {
        return from.changed(change -> change.withOil(grades.get(i).oil()));
    }

    /** A grade has no band of its own; the chances of the grades say how sure the choice is. */
    static Quantiles band() {
        return new Quantiles(Double.NaN, Double.NaN, Double.NaN);
    }

    double low() {
        return grades.get(0).viscosity();
    }

    double high() {
        return grades.get(grades.size() - 1).viscosity();
    }

    List<Option> options(double[] chances) {
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < grades.size(); i++) {
            Design moved = moved(i);
            options.add(new Option(
                    grades.get(i).label(),
                    grades.get(i).viscosity(),
                    trials.opening(moved),
                    trials.meets(moved),
                    chances[i],
                    moved.packResistance(),
                    moved.crowdedShare()));
        }
        return options;
    }
}
