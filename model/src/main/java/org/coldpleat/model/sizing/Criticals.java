package org.coldpleat.model.sizing;

import java.util.Arrays;
import org.coldpleat.model.numerics.Quantiles;

/** Moves at which the draws begin to meet a target, in rising order; a draw without an answer counts as one that never does. */
final class Criticals {
    private static final double LOW = 0.025;
    private static final double HIGH = 0.975;

    private final double[] sorted;
    private final double unanswered;

    Criticals(double[] moves) {
        double[] all = new double[moves.length];
        int missing = 0;
        for (int i = 0; i < moves.length; i++) {
            missing += Double.isNaN(moves[i]) ? 1 : 0;
            all[i] = Double.isNaN(moves[i]) ? Double.POSITIVE_INFINITY : moves[i];
        }
        Arrays.sort(all);
        sorted = all;
        unanswered = (double) missing / moves.length;
    }

    /** Share of draws that meet the target at a move [1]. */
    double chance(double move) {
        int met = 0;
        while (met < sorted.length && sorted[met] <= move) {
            met++;
        }
        return (double) met / sorted.length;
    }

    /** Least move that so many draws meet the target at; infinite if there is none, or any will do. */
    double atChance(double chance) {
        return sorted[Math.max(0, (int) Math.ceil(chance * sorted.length) - 1)];
    }

    /** Share of draws without an answer [1]. */
    double unanswered() {
        return unanswered;
    }

    /** Middle and 95 % band of what a move stands for. */
    Quantiles band(double present, Lever lever) {
        double low = lever.value(present, atChance(LOW));
        double high = lever.value(present, atChance(HIGH));
        return new Quantiles(lever.value(present, atChance(0.5)), Math.min(low, high), Math.max(low, high));
    }
}
