package org.coldpleat.shared.casefile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;

/** The catalog of fields, read once from the JSON Schema that is shipped with the program. */
final class CaseSchema {
    static final String RESOURCE = "case-v1.schema.json";

    /** The top of the catalog. */
    static final SchemaNode ROOT = load();

    private static final int NO_LIMIT = Integer.MAX_VALUE;

    private CaseSchema() {}

    private static SchemaNode load() {
        try (InputStream in = CaseSchema.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("resource " + RESOURCE + " is missing");
            }
            String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            FileProblems problems = new FileProblems(RESOURCE);
            Optional<Tree> tree = TreeBuilder.build(json, problems);
            if (tree.isEmpty() || !problems.isEmpty()) {
                throw new IllegalStateException("resource " + RESOURCE + " is broken: " + problems.inFileOrder());
            }
            return node(tree.get());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SchemaNode node(Tree tree) {
        Map<String, Tree> map = map(tree);
        Optional<Kind> kind = text(map, "x-kind").map(Kind::valueOf);
        SchemaNode.Type type = type(map, kind.isPresent());
        Map<String, SchemaNode> properties = new LinkedHashMap<>();
        if (type == SchemaNode.Type.SECTION) {
            map(map.get("properties")).forEach((key, below) -> properties.put(key, node(below)));
        }
        boolean list = type == SchemaNode.Type.LIST;
        return new SchemaNode(
                type,
                text(map, "description").orElse(""),
                Collections.unmodifiableMap(properties),
                texts(map.get("required")),
                list ? Optional.of(node(map.get("items"))) : Optional.empty(),
                number(map, "minItems", 0),
                number(map, "maxItems", NO_LIMIT),
                texts(map.get("enum")),
                kind,
                limit(map, "x-min", kind, true).or(() -> limit(map, "x-above", kind, false)),
                limit(map, "x-max", kind, true),
                text(map, "x-typical").map(Boolean::parseBoolean).orElse(false),
                text(map, "x-provenance").map(Provenance::valueOf),
                number(map, "minLength", 0),
                number(map, "maxLength", NO_LIMIT));
    }

    private static SchemaNode.Type type(Map<String, Tree> map, boolean quantity) {
        if (quantity) {
            return SchemaNode.Type.QUANTITY;
        }
        if (map.containsKey("enum")) {
            return SchemaNode.Type.CHOICE;
        }
        return switch (text(map, "type").orElse("string")) {
            case "object" -> SchemaNode.Type.SECTION;
            case "array" -> SchemaNode.Type.LIST;
            case "boolean" -> SchemaNode.Type.FLAG;
            case "integer" -> SchemaNode.Type.INTEGER;
            default -> SchemaNode.Type.TEXT;
        };
    }

    private static Optional<SchemaNode.Limit> limit(
            Map<String, Tree> map, String key, Optional<Kind> kind, boolean included) {
        return text(map, key).map(written -> {
            double si = QuantityText.parse(written, kind.orElseThrow(), Provenance.PUBLISHED)
                    .value()
                    .orElseThrow(() -> new IllegalStateException("limit not understood: " + written))
                    .value();
            return new SchemaNode.Limit(si, written, included);
        });
    }

    private static Map<String, Tree> map(Tree tree) {
        if (!(tree instanceof Keys keys)) {
            throw new IllegalStateException("keys wanted in " + RESOURCE + " at line " + tree.line());
        }
        Map<String, Tree> map = new LinkedHashMap<>();
        for (Pair pair : keys.pairs()) {
            map.put(pair.key().text(), pair.value());
        }
        return map;
    }

    private static Optional<String> text(Map<String, Tree> map, String key) {
        return map.get(key) instanceof Scalar scalar ? Optional.of(scalar.text()) : Optional.empty();
    }

    private static int number(Map<String, Tree> map, String key, int otherwise) {
        return text(map, key).map(Integer::parseInt).orElse(otherwise);
    }

    private static List<String> texts(Tree tree) {
        if (!(tree instanceof Items items)) {
            return List.of();
        }
        return items.items().stream()
                .filter(Scalar.class::isInstance)
                .map(item -> ((Scalar) item).text())
                .toList();
    }
}
