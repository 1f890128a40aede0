package org.coldpleat.model.pleat;

import java.util.Objects;
import org.coldpleat.shared.quantity.Measured;

/**
 * A signed correction of a length read off the strip, with its reason: a glue line not measured counts plus, a seam
 * overlap counts minus.
 *
 * @param reason in the words of the user
 * @param length [m], any sign
 */
public record Allowance(String reason, Measured length) {
    public Allowance {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(length, "length");
    }
}
