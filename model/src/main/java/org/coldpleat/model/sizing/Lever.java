package org.coldpleat.model.sizing;

import org.coldpleat.model.change.AreaBy;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.sizing.SizingResult.Variable;

/**
 * What is moved to meet a target, as the logarithm of a factor on the present value, so turned that more of it brings the
 * target nearer.
 *
 * @param variable what is moved; {@code PLEATS} stands for the resistance of the pack, which the pleat count moves
 * @param direction 1 if a greater value brings the target nearer, -1 if a smaller one does
 * @param free share of the present value that is moved [1]; the rest stays, such as medium under the caps
 * @param lowest least move [1]
 * @param highest greatest move [1]
 */
record Lever(Variable variable, int direction, double free, double lowest, double highest) {
    /** Factor that area and resistance are moved by at most [1]; beyond it is another filter altogether. */
    private static final double MOST = 20;

    /** Opening pressures looked at [Pa]: those that a case file may state. */
    private static final double LEAST_OPENING = 5e3;

    private static final double GREATEST_OPENING = 600e3;

    static Lever of(Variable variable, Target.Kind target, Design present) {
        boolean collapse = target == Target.Kind.ELEMENT_BELOW;
        return switch (variable) {
            case AREA -> new Lever(variable, 1, present.freeShare(), -Math.log(MOST), Math.log(MOST));
            case RESISTANCE, PLEATS -> new Lever(variable, -1, 1, -Math.log(MOST), Math.log(MOST));
            case OPENING -> {
                double now = present.openingPressure().orElseThrow();
                double down = Math.log(LEAST_OPENING / now);
                double up = Math.log(GREATEST_OPENING / now);
                yield collapse ? new Lever(variable, -1, 1, -up, -down) : new Lever(variable, 1, 1, down, up);
            }
            case GRADE -> throw new IllegalArgumentException("a grade is no number to be moved");
        };
    }

    /** Factor on what is moved [1]. */
    double factor(double move) {
        return Math.exp(direction * move);
    }

    /** Value after a move, from the present one. */
    double value(double present, double move) {
        return present * (1 + free * (factor(move) - 1));
    }

    /** The design moved. */
    Design move(Design design, double move) {
        double factor = factor(move);
        return design.changed(change -> switch (variable) {
            case AREA -> change.timesArea(AreaBy.TALLER_PLEATS, factor);
            case RESISTANCE -> change.timesMediumResistance(factor);
            case OPENING -> change.timesOpening(factor);
            case PLEATS -> change.timesPack(factor);
            case GRADE -> throw new IllegalArgumentException("a grade is no number to be moved");
        });
    }
}
