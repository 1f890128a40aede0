package org.coldpleat.shared.quantity;

import java.util.Objects;
import java.util.Optional;

/**
 * Outcome of reading a quantity: either a value or the reason why there is none.
 *
 * @param value the quantity, if the text was understood
 * @param problem the reason, if it was not
 */
public record QuantityReading(Optional<Measured> value, Optional<QuantityProblem> problem) {
    public QuantityReading {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(problem, "problem");
        if (value.isPresent() == problem.isPresent()) {
            throw new IllegalArgumentException("exactly one of value and problem must be present");
        }
    }

    static QuantityReading of(Measured value) {
        return new QuantityReading(Optional.of(value), Optional.empty());
    }

    static QuantityReading of(QuantityProblem problem) {
        return new QuantityReading(Optional.empty(), Optional.of(problem));
    }
}
