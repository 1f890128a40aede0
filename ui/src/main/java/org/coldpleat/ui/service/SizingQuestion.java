package org.coldpleat.ui.service;

import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.coldpleat.model.sizing.SizingRequest;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.Target;

/**
 * What is to be sized, as a user asks for it.
 *
 * @param candidate name of a candidate of the case
 * @param variable what may change
 * @param target the target in words
 * @param confidence chance with which it is to hold [1], between 0 and 1, if wanted
 * @param loadedAfter running time with whose dirt it is to hold as well [s], above 0, if wanted
 * @param loadedShare share of the dirt capacity with which it is to hold as well [1], above 0, if wanted
 * @param draws number of draws, at least 16
 * @param seed same seed, same result
 */
public record SizingQuestion(
        String candidate,
        SizingResult.Variable variable,
        String target,
        OptionalDouble confidence,
        OptionalDouble loadedAfter,
        OptionalDouble loadedShare,
        int draws,
        long seed) {
    public SizingQuestion {
        Objects.requireNonNull(candidate, "candidate");
        Objects.requireNonNull(variable, "variable");
        Objects.requireNonNull(target, "target");
    }

    SizingRequest about(Target read) {
        return new SizingRequest(candidate, variable, read, confidence, loadedAfter, loadedShare, draws, seed);
    }

    /**
     * How many pleats keep the valve of a candidate shut.
     *
     * @param kelvin oil temperature down to which it is to stay shut
     * @param state state of engine or stand
     */
    public static SizingQuestion pleatsThatKeepShut(
            String candidate, double kelvin, String state, int draws, long seed) {
        String target = String.format(Locale.ROOT, "never open at %.2f K in %s", kelvin, state);
        return new SizingQuestion(
                candidate,
                SizingResult.Variable.PLEATS,
                target,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                draws,
                seed);
    }
}
