package org.coldpleat.model.sizing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.change.DirtLoad;
import org.coldpleat.model.progress.Evaluations;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Condition;
import org.coldpleat.model.sizing.SizingResult.Option;

/** Sizes a candidate under one condition, clean or with dirt, on the best estimate and over the draws. */
final class ConditionSizing {
    private final TargetTrials trials;
    private final SizingRequest request;
    private final double present;
    private final Design design;
    private final List<Draw> draws;
    private final Optional<DirtLoad> load;
    private final Progress progress;
    private int crossings = 1;
    private OptionalDouble optimum = OptionalDouble.empty();

    ConditionSizing(
            TargetTrials trials,
            SizingRequest request,
            double present,
            Design clean,
            List<Draw> draws,
            Optional<DirtLoad> load,
            Progress progress) {
        this.trials = trials;
        this.request = request;
        this.present = present;
        this.draws = draws;
        this.load = load;
        this.progress = progress;
        design =
                load.map(dirt -> clean.changed(change -> change.withLoad(dirt))).orElse(clean);
    }

    /** Number of places at which the target begins or ceases to hold. */
    int crossings() {
        return crossings;
    }

    /** Pleat count whose pack resists least, if pleats were counted. */
    OptionalDouble optimum() {
        return optimum;
    }

    /** The condition; empty if cancelled. */
    Optional<Condition> size() {
        return switch (request.variable()) {
            case PLEATS -> pleats();
            case GRADE -> grade();
            default -> continuous();
        };
    }

    private Optional<double[][]> overDraws(Function<Optional<Design>, double[]> task) {
        return Evaluations.run(draws.size(), i -> task.apply(draws.get(i).under(load)), progress);
    }

    private Optional<Condition> continuous() {
        Lever lever = Lever.of(request.variable(), request.target().kind(), design);
        ContinuousSizing sizing = new ContinuousSizing(trials, lever, present, design);
        crossings = sizing.crossings();
        double start = sizing.move();
        return overDraws(draw -> critical(draw, lever, start)).map(all -> {
            Criticals criticals =
                    new Criticals(Arrays.stream(all).mapToDouble(one -> one[0]).toArray());
            Answer best = sizing.best(criticals);
            List<Answer> sure = request.confidence().stream()
                    .mapToObj(chance -> sizing.sure(criticals, chance))
                    .toList();
            List<Option> options =
                    sizing.options(criticals, request.confidence().stream().toArray());
            return new Condition(
                    load.isPresent(),
                    load.map(DirtLoad::mass).orElse(0.0),
                    design.loadRatio(),
                    best,
                    sizing.band(criticals),
                    sure,
                    trials.opening(design),
                    criticals.chance(0),
                    criticals.unanswered(),
                    sizing.low(),
                    sizing.high(),
                    options);
        });
    }

    private double[] critical(Optional<Design> draw, Lever lever, double start) {
        return new double[] {draw.map(one -> trials.critical(one, lever, start)).orElse(Double.NaN)};
    }

    private Optional<Condition> pleats() {
        Lever lever = Lever.of(request.variable(), request.target().kind(), design);
        PleatSizing sizing = new PleatSizing(trials, lever, design);
        optimum = OptionalDouble.of(sizing.optimum());
        double start = sizing.move(lever);
        Optional<double[][]> criticals = overDraws(draw -> critical(draw, lever, start));
        return criticals.map(moves -> {
            double[][] met = new double[moves.length][];
            for (int i = 0; i < moves.length; i++) {
                met[i] = sizing.met(draws.get(i).under(load), lever, moves[i][0]);
            }
            double[] chances = sizing.chances(met);
            Criticals all = new Criticals(
                    Arrays.stream(moves).mapToDouble(one -> one[0]).toArray());
            return new Condition(
                    load.isPresent(),
                    load.map(DirtLoad::mass).orElse(0.0),
                    design.loadRatio(),
                    sizing.best(chances),
                    sizing.band(met),
                    request.confidence().stream()
                            .mapToObj(chance -> sizing.sure(chances, chance))
                            .toList(),
                    trials.opening(design),
                    all.chance(0),
                    all.unanswered(),
                    sizing.low(),
                    sizing.high(),
                    sizing.options(chances));
        });
    }

    private Optional<Condition> grade() {
        GradeSizing sizing = new GradeSizing(trials, design, request.target().temperature());
        Optional<double[][]> presents = overDraws(draw ->
                new double[] {draw.map(one -> trials.meets(one) ? 1.0 : 0.0).orElse(Double.NaN)});
        Optional<double[][]> drawn = overDraws(sizing::met);
        return presents.flatMap(now -> drawn.map(met -> {
            double[] chances = sizing.chances(met);
            double holds = Arrays.stream(now).filter(one -> one[0] > 0).count();
            double missing =
                    Arrays.stream(now).filter(one -> Double.isNaN(one[0])).count();
            return new Condition(
                    load.isPresent(),
                    load.map(DirtLoad::mass).orElse(0.0),
                    design.loadRatio(),
                    sizing.best(chances),
                    GradeSizing.band(),
                    request.confidence().stream()
                            .mapToObj(chance -> sizing.sure(chances, chance))
                            .toList(),
                    trials.opening(design),
                    holds / now.length,
                    missing / now.length,
                    sizing.low(),
                    sizing.high(),
                    sizing.options(chances));
        }));
    }
}
