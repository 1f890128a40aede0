package org.coldpleat.shared.notice;

import java.util.List;
import java.util.Objects;
import org.coldpleat.shared.quantity.Shown;

/**
 * A finding that goes with a result. It carries a code, a place and values; the words live in the bundle
 * {@code notices.properties} beside this class.
 *
 * @param code key of the text, such as {@code area.routesDisagree}
 * @param severity how much it matters
 * @param place what it is about, such as {@code candidate Blue can} or {@code oil}; empty for the whole case
 * @param values words and amounts for the placeholders of the text
 */
public record Notice(String code, Severity severity, String place, List<Shown> values) {
    public Notice {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        values = List.copyOf(values);
    }

    /** A notice without values. */
    public static Notice of(String code, Severity severity, String place) {
        return new Notice(code, severity, place, List.of());
    }

    /** Shorthand for a notice with values. */
    public static Notice of(String code, Severity severity, String place, Shown... values) {
        return new Notice(code, severity, place, List.of(values));
    }

    /** Shorthand for a notice with words alone. */
    public static Notice of(String code, Severity severity, String place, String... words) {
        return new Notice(code, severity, place, Shown.words(List.of(words)));
    }
}
