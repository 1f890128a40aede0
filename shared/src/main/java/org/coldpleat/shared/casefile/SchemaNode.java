package org.coldpleat.shared.casefile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.source.Provenance;

/** One field of the catalog. Parts that do not apply to its type are empty. */
public record SchemaNode(
        Type type,
        String description,
        Map<String, SchemaNode> properties,
        List<String> required,
        Optional<SchemaNode> items,
        int fewest,
        int most,
        List<String> choices,
        Optional<Kind> kind,
        Optional<Limit> lower,
        Optional<Limit> upper,
        boolean typicalOffered,
        Optional<Provenance> provenance,
        int shortest,
        int longest) {
    /** Parts of a quantity that is spelled out. */
    public static final List<String> QUANTITY_KEYS = List.of("value", "plusMinus", "provenance", "note");

    /** Words for where a value comes from, as a case file has them. */
    public static final List<String> PROVENANCES =
            List.of("measured", "printed", "maker", "published", "typical", "guessed");

    /** What a field holds. */
    public enum Type {
        SECTION,
        LIST,
        QUANTITY,
        TEXT,
        CHOICE,
        FLAG,
        INTEGER
    }

    /**
     * A limit of a quantity.
     *
     * @param si in the SI unit of the kind
     * @param written with its unit, as the catalog has it
     * @param included false if the limit itself is not allowed
     */
    public record Limit(double si, String written, boolean included) {}
}
