package org.coldpleat.model.bench;

import java.util.Objects;

/**
 * One named step between the raw reading and the estimate.
 *
 * @param name key of its text below {@code bench.correction.}, such as {@code slip}
 * @param relativeSize what the step changed, as a share of the estimate [1]; signed, 0 if it only adds uncertainty
 * @param lnSigma what the step adds to the relative standard uncertainty of the estimate [1], in root sum of squares
 */
public record Correction(String name, double relativeSize, double lnSigma) {
    public Correction {
        Objects.requireNonNull(name, "name");
        if (!Double.isFinite(relativeSize) || !(lnSigma >= 0)) {
            throw new IllegalArgumentException(
                    "correction " + name + " must be finite, was " + relativeSize + " with " + lnSigma);
        }
    }
}
