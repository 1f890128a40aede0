package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.run.Design;
import org.coldpleat.model.run.Quantiles;
import org.coldpleat.model.run.SizingResult.Answer;
import org.coldpleat.model.run.SizingResult.Option;
import org.coldpleat.model.run.SizingResult.Status;

/** Sizes a value that may be any number: area, opening pressure, medium resistance. */
final class ContinuousSizing {
    private static final int OPTIONS = 25;

    /** Options reach so far beyond present value and answer, in logarithms [1]. */
    private static final double BEYOND = 0.5;

    private final TargetTrials trials;
    private final Lever lever;
    private final double present;
    private final Design design;
    private final Search.Found found;

    ContinuousSizing(TargetTrials trials, Lever lever, double present, Design design) {
        this.trials = trials;
        this.lever = lever;
        this.present = present;
        this.design = design;
        found = trials.search(design, lever);
    }

    /** Number of places at which the target begins or ceases to hold. */
    int crossings() {
        return found.crossings().size();
    }

    /** Move that just meets the target on the best estimate, or the end of the lever nearest to it. */
    double move() {
        OptionalDouble nearest = found.nearest(0);
        return nearest.orElse(found.greatest() >= 0 ? lever.lowest() : lever.highest());
    }

    private Status status() {
        if (!found.crossings().isEmpty()) {
            return Status.FOUND;
        }
        if (found.unanswered() > 0 || Double.isNaN(found.greatest())) {
            return Status.UNRESOLVED;
        }
        return found.greatest() >= 0 ? Status.ALWAYS : Status.NEVER;
    }

    Answer best(Criticals criticals) {
        return answer(status(), move(), criticals);
    }

    /** The answer that holds with a chance. */
    Answer sure(Criticals criticals, double chance) {
        double move = criticals.atChance(chance);
        Status status = move == Double.POSITIVE_INFINITY
                ? Status.NEVER
                : move == Double.NEGATIVE_INFINITY ? Status.ALWAYS : Status.FOUND;
        return answer(status, within(move), criticals);
    }

    private double within(double move) {
        return Math.max(lever.lowest(), Math.min(lever.highest(), move));
    }

    private Answer answer(Status status, double move, Criticals criticals) {
        boolean is = status == Status.FOUND;
        boolean none = status == Status.NEVER;
        double end = Double.isNaN(found.greatestAt()) ? lever.highest() : found.greatestAt();
        double reachable = none ? end : move;
        return new Answer(
                status,
                "",
                is ? value(move) : Double.NaN,
                is ? trials.opening(lever.move(design, move)) : Double.NaN,
                criticals.chance(reachable + 1e-9),
                none ? value(reachable) : Double.NaN,
                "",
                none ? trials.opening(lever.move(design, reachable)) : Double.NaN);
    }

    Quantiles band(Criticals criticals) {
        return criticals.band(present, lever);
    }

    private double value(double move) {
        return lever.value(present, move);
    }

    double low() {
        return Math.min(value(lever.lowest()), value(lever.highest()));
    }

    double high() {
        return Math.max(value(lever.lowest()), value(lever.highest()));
    }

    /**
     * Values about the present one and the answers, in rising order.
     *
     * @param chances that were asked for [1]
     */
    List<Option> options(Criticals criticals, double... chances) {
        double least = Math.min(0, move());
        double most = Math.max(0, move());
        for (double chance : chances) {
            double place = within(criticals.atChance(chance));
            least = Math.min(least, place);
            most = Math.max(most, place);
        }
        least = Math.max(lever.lowest(), least - BEYOND);
        most = Math.min(lever.highest(), most + BEYOND);
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < OPTIONS; i++) {
            int step = lever.direction() > 0 ? i : OPTIONS - 1 - i;
            double move = least + (most - least) * step / (OPTIONS - 1);
            Design moved = lever.move(design, move);
            options.add(new Option(
                    "",
                    value(move),
                    trials.opening(moved),
                    trials.meets(moved),
                    criticals.chance(move),
                    moved.packResistance(),
                    moved.crowdedShare()));
        }
        return options;
    }
}
