package org.coldpleat.model.confidence;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.source.Source;

/**
 * Draws of the unknowns and the answers they lead to. One draw serves all candidates, so what they share cancels when
 * they are compared.
 */
@Source("JCGM 101:2008, clause 7 (propagation of distributions), with quasi-random in place of random draws")
public final class Propagation {
    private final List<UncertainQuantity> unknowns;
    private final double[][] inputs;
    private final double[][] answers;

    private Propagation(List<UncertainQuantity> unknowns, double[][] inputs, double[][] answers) {
        this.unknowns = unknowns;
        this.inputs = inputs;
        this.answers = answers;
    }

    /**
     * Carries the unknowns through a model.
     *
     * @param model function from values to answers
     * @param unknowns at least one, names unique
     * @param draws number of draws, at least 2; a power of two covers most evenly
     * @param seed same seed, same result, bit for bit
     * @param progress told of the advance; may cancel
     * @return the draws with their answers, or nothing if cancelled
     */
    public static Optional<Propagation> run(
            Model model, List<UncertainQuantity> unknowns, int draws, long seed, Progress progress) {
        List<UncertainQuantity> ordered = checked(unknowns);
        if (draws < 2) {
            throw new IllegalArgumentException("draws must be at least 2, was " + draws);
        }
        SobolDraws sequence = new SobolDraws(ordered.size(), seed);
        double[][] inputs = new double[draws][];
        return Evaluations.run(
                        draws,
                        i -> {
                            inputs[i] = values(ordered, sequence.point(i));
                            return model.answers(inputs[i].clone()).clone();
                        },
                        progress)
                .map(answers -> new Propagation(ordered, inputs, answers));
    }

    /** The unknowns, in the order of the inputs. */
    public List<UncertainQuantity> unknowns() {
        return unknowns;
    }

    /** Number of draws. */
    public int draws() {
        return answers.length;
    }

    /** Number of answers a draw. */
    public int answerCount() {
        return answers[0].length;
    }

    /** Drawn values of one unknown, in the order of the draws. */
    public double[] inputs(int unknown) {
        return column(inputs, unknown);
    }

    /** Drawn values of all unknowns in one draw. */
    public double[] input(int draw) {
        return inputs[draw].clone();
    }

    /** One answer in one draw. */
    public double answer(int draw, int answer) {
        return answers[draw][answer];
    }

    /** Values of one answer, in the order of the draws. */
    public double[] answers(int answer) {
        return column(answers, answer);
    }

    /** Distribution of one answer. */
    public Outcomes outcomes(int answer) {
        return Outcomes.of(answers(answer));
    }

    /** Comparison of two answers draw by draw. */
    public Pair pair(int first, int second) {
        return Pair.compare(answers(first), answers(second));
    }

    static List<UncertainQuantity> checked(List<UncertainQuantity> unknowns) {
        List<UncertainQuantity> copy = List.copyOf(unknowns);
        long names = copy.stream().map(UncertainQuantity::name).distinct().count();
        if (copy.isEmpty() || names != copy.size()) {
            throw new IllegalArgumentException("unknowns must be at least one with unique names, had " + copy.size()
                    + " with " + names + " names");
        }
        return copy;
    }

    static double[] values(List<UncertainQuantity> unknowns, double[] point) {
        double[] values = new double[unknowns.size()];
        for (int j = 0; j < values.length; j++) {
            values[j] = unknowns.get(j).quantile(point[j]);
        }
        return values;
    }

    private static double[] column(double[][] rows, int index) {
        double[] column = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = rows[i][index];
        }
        return column;
    }
}
