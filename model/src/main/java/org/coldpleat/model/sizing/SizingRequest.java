package org.coldpleat.model.sizing;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is to be sized.
 *
 * @param candidate name of a candidate of the case
 * @param variable what may change
 * @param target what it is to do
 * @param confidence chance with which the target is to hold [1], between 0 and 1, if wanted
 * @param loadedAfter running time with whose dirt it is to hold as well [s], above 0, if wanted
 * @param loadedShare share of the dirt capacity with which it is to hold as well [1], above 0, if wanted
 * @param draws number of draws, at least 16; a power of two covers most evenly
 * @param seed same seed, same result
 */
public record SizingRequest(
        String candidate,
        SizingResult.Variable variable,
        Target target,
        OptionalDouble confidence,
        OptionalDouble loadedAfter,
        OptionalDouble loadedShare,
        int draws,
        long seed) {
    /** Draws of a usual run [1]. */
    public static final int USUAL_DRAWS = 512;

    public SizingRequest {
        Objects.requireNonNull(candidate, "candidate");
        Objects.requireNonNull(variable, "variable");
        Objects.requireNonNull(target, "target");
        confidence.ifPresent(chance -> require("confidence", chance, chance > 0 && chance < 1));
        loadedAfter.ifPresent(time -> require("loadedAfter", time, time > 0));
        loadedShare.ifPresent(share -> require("loadedShare", share, share > 0));
        require("draws", draws, draws >= 16);
        require("one of loadedAfter and loadedShare", 2, loadedAfter.isEmpty() || loadedShare.isEmpty());
    }

    private static void require(String name, double value, boolean good) {
        if (!good) {
            throw new IllegalArgumentException(name + " is out of its range, was " + value);
        }
    }
}
