package org.coldpleat.model.certainty.draw;

/**
 * The answer whose spread is taken apart, with the stretch of values that matters. Variances need finite numbers: never
 * (minus infinity) is counted as the lower end of the stretch and always as the upper end, and so are values beyond
 * them.
 *
 * @param index which answer of the model
 * @param lowest lower end of the stretch, such as the coldest temperature looked at [SI of the answer]
 * @param highest upper end [SI of the answer]
 */
public record Answer(int index, double lowest, double highest) {
    public Answer {
        if (!(lowest < highest)) {
            throw new IllegalArgumentException("lowest " + lowest + " must be below highest " + highest);
        }
    }

    /** The first answer of a model whose answers are all finite, without ends. */
    public static Answer finite() {
        return new Answer(0, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    /** The answer of one draw, brought into the stretch; {@code NaN} stays. */
    double of(double[] answers) {
        return Math.max(lowest, Math.min(highest, answers[index]));
    }
}
