package org.coldpleat.shared.casefile.catalog;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.quantity.Kind;

/**
 * One field of the catalog as a person at the bench sees it.
 *
 * @param key its key in the file
 * @param type what it holds
 * @param label what to call it, in trade words
 * @param hint what it means, as a sentence
 * @param kind what a quantity measures; empty for other types
 * @param unit the usual unit of a quantity; blank for bare numbers and other types
 * @param choices words that can be chosen, as they stand in the file; empty for free text
 * @param typicalOffered true if the word typical may stand there
 * @param required true if its section is no use without it
 * @param fields fields of a section, or of an entry of a list, in the order of the work
 */
public record Field(
        String key,
        Type type,
        String label,
        String hint,
        Optional<Kind> kind,
        String unit,
        List<String> choices,
        boolean typicalOffered,
        boolean required,
        List<Field> fields) {
    /** What a field holds. */
    public enum Type {
        /** Fields of its own. */
        SECTION,
        /** Entries that have the same fields. */
        LIST,
        /** A number with its unit. */
        QUANTITY,
        /** Free words. */
        TEXT,
        /** One of some words. */
        CHOICE
    }

    public Field {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(hint, "hint");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        choices = List.copyOf(choices);
        fields = List.copyOf(fields);
    }

    /** True if it holds a value of its own. */
    public boolean isLeaf() {
        return type != Type.SECTION && type != Type.LIST;
    }

    /** A field of this section or of an entry of this list. */
    public Field field(String name) {
        return fields.stream()
                .filter(one -> one.key().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no field " + name + " in " + key));
    }
}
