package org.coldpleat.model.explain;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;

/**
 * One link of the chain behind a number: what it is, its value, and what it was computed from, down to what was read
 * off the bench. Title, equation and source of a link live in the bundle {@code explanations.properties} under
 * {@code key + ".title"}, {@code ".equation"} and {@code ".source"}.
 *
 * @param key key of the texts
 * @param subject what it belongs to, such as a candidate or state name; empty if clear from the chain
 * @param kind what the value measures
 * @param value value [SI]; NaN for a link that only groups or names a choice
 * @param spread how sure the value is, as a value with its band; empty if exact or unknown
 * @param origin as written in the case with path, line and provenance; empty for a computed link
 * @param inputs what the value was computed from
 */
public record Explanation(
        String key,
        String subject,
        Kind kind,
        double value,
        Optional<Measured> spread,
        String origin,
        List<Explanation> inputs) {
    public Explanation {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(spread, "spread");
        inputs = List.copyOf(inputs);
    }

    /** A computed link whose spread is unknown. */
    Explanation(String key, String subject, Kind kind, double value, List<Explanation> inputs) {
        this(key, subject, kind, value, Optional.empty(), "", inputs);
    }
}
