package org.coldpleat.model.certainty.draw;

/** A function from the values of the unknowns to the answers. Must be pure: it is called from several threads. */
@FunctionalInterface
public interface Model {
    /**
     * Answers for one set of values.
     *
     * @param values one value an unknown, in the order of the list of unknowns [SI]
     * @return answers, the same number each time; {@code -Infinity} stands for never, {@code +Infinity} for always,
     *     {@code NaN} for no answer
     */
    double[] answers(double[] values);

    /**
     * The same function for calls of one thread, one after the other, that differ from the first two in few values only: it
     * may remember what they share.
     */
    default Model inRow() {
        return this;
    }
}
