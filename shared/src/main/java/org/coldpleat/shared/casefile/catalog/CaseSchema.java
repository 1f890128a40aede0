package org.coldpleat.shared.casefile.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Units;
import org.coldpleat.shared.source.Provenance;

/** The catalog of fields, read once from the JSON Schema that is shipped with the program. */
public final class CaseSchema {
    static final String RESOURCE = "case-v1.schema.json";

    /** The top of the catalog. */
    public static final SchemaNode ROOT = load();

    private static final int NO_LIMIT = Integer.MAX_VALUE;

    private CaseSchema() {}

    private static SchemaNode load() {
        try (InputStream in = CaseSchema.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("resource " + RESOURCE + " is missing");
            }
            return node(SchemaText.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SchemaNode node(SchemaText written) {
        String kindName = written.word("x-kind");
        Optional<Kind> kind = kindName.isEmpty() ? Optional.empty() : Optional.of(Kind.valueOf(kindName));
        SchemaNode.Type type = type(written, kind.isPresent());
        Map<String, SchemaNode> properties = new LinkedHashMap<>();
        if (type == SchemaNode.Type.SECTION) {
            for (Map.Entry<String, SchemaText> below :
                    written.keys().get("properties").keys().entrySet()) {
                properties.put(below.getKey(), node(below.getValue()));
            }
        }
        String above = written.word("x-above");
        String provenance = written.word("x-provenance");
        return new SchemaNode(
                type,
                written.word("description"),
                Collections.unmodifiableMap(properties),
                words(written, "required"),
                type == SchemaNode.Type.LIST ? Optional.of(node(written.keys().get("items"))) : Optional.empty(),
                number(written, "minItems", 0),
                number(written, "maxItems", NO_LIMIT),
                words(written, "enum"),
                kind,
                above.isEmpty() ? limit(written.word("x-min"), kind, true) : limit(above, kind, false),
                limit(written.word("x-max"), kind, true),
                Boolean.parseBoolean(written.word("x-typical")),
                provenance.isEmpty() ? Optional.empty() : Optional.of(Provenance.valueOf(provenance)),
                number(written, "minLength", 0),
                number(written, "maxLength", NO_LIMIT));
    }

    private static SchemaNode.Type type(SchemaText written, boolean quantity) {
        if (quantity) {
            return SchemaNode.Type.QUANTITY;
        }
        if (written.keys().containsKey("enum")) {
            return SchemaNode.Type.CHOICE;
        }
        return switch (written.word("type")) {
            case "object" -> SchemaNode.Type.SECTION;
            case "array" -> SchemaNode.Type.LIST;
            case "boolean" -> SchemaNode.Type.FLAG;
            case "integer" -> SchemaNode.Type.INTEGER;
            default -> SchemaNode.Type.TEXT;
        };
    }

    /** A limit, which is a plain number with its unit behind a space. */
    private static Optional<SchemaNode.Limit> limit(String written, Optional<Kind> kind, boolean included) {
        if (written.isEmpty()) {
            return Optional.empty();
        }
        int space = written.indexOf(' ');
        double number = Double.parseDouble(space < 0 ? written : written.substring(0, space));
        double si = Units.require(kind.orElseThrow(), space < 0 ? "" : written.substring(space + 1))
                .toSi(number);
        return Optional.of(new SchemaNode.Limit(si, written, included));
    }

    private static int number(SchemaText written, String key, int otherwise) {
        String word = written.word(key);
        return word.isEmpty() ? otherwise : Integer.parseInt(word);
    }

    private static List<String> words(SchemaText written, String key) {
        SchemaText list = written.keys().get(key);
        return list == null
                ? List.of()
                : list.items().stream().map(SchemaText::word).toList();
    }
}
