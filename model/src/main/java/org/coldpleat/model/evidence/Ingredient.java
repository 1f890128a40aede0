package org.coldpleat.model.evidence;

import java.util.Objects;
import org.coldpleat.shared.quantity.Kind;

/**
 * A value that an evidence was computed from, for showing the way back.
 *
 * @param key what it is, such as {@code solidity} or {@code davies}
 * @param kind what it measures
 * @param value [SI]
 */
public record Ingredient(String key, Kind kind, double value) {
    public Ingredient {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(kind, "kind");
    }
}
