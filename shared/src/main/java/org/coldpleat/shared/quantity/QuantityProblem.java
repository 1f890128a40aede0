package org.coldpleat.shared.quantity;

import java.util.List;
import java.util.Objects;

/**
 * Why a text was not understood as a quantity.
 *
 * @param code key of the words, such as {@code quantity.unitMissing}
 * @param values values for the placeholders of the words
 */
public record QuantityProblem(String code, List<String> values) {
    public QuantityProblem {
        Objects.requireNonNull(code, "code");
        values = List.copyOf(values);
    }
}
