package org.coldpleat.shared.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coldpleat.shared.quantity.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CaseSchemaTest {
    private static JsonNode catalog() throws IOException {
        try (InputStream in = CaseSchema.class.getResourceAsStream(CaseSchema.RESOURCE)) {
            return new ObjectMapper().readTree(in);
        }
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(catalog());
    }

    private static JsonNode json(Path file) throws IOException {
        FileProblems problems = new FileProblems(file.toString());
        Tree tree = TreeBuilder.build(Files.readString(file, StandardCharsets.UTF_8), problems)
                .orElseThrow();
        return json(tree);
    }

    private static JsonNode json(Tree tree) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (tree instanceof Tree.Keys keys) {
            ObjectNode node = make.objectNode();
            keys.pairs().forEach(pair -> node.set(pair.key().text(), json(pair.value())));
            return node;
        }
        if (tree instanceof Tree.Items items) {
            ArrayNode node = make.arrayNode();
            items.items().forEach(item -> node.add(json(item)));
            return node;
        }
        Tree.Scalar scalar = (Tree.Scalar) tree;
        if (scalar.plain() && scalar.text().matches("true|false")) {
            return make.booleanNode(scalar.text().equals("true"));
        }
        if (scalar.plain() && scalar.text().matches("[0-9]+")) {
            return make.numberNode(Integer.parseInt(scalar.text()));
        }
        return scalar.isBlank() ? make.nullNode() : make.textNode(scalar.text());
    }

    @Test
    void isItselfValidJsonSchema() throws IOException {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(catalog()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ridge-hut.yaml", "bench-of-invented-filters.yaml"})
    void goodCasesPassAJsonSchemaValidator(String file) throws IOException {
        assertEquals(List.of(), schema().validate(json(Path.of("src/test/resources/cases", file))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "unknown-key.yaml",
                "missing-oil.yaml",
                "unknown-choice.yaml",
                "wrong-type-list.yaml",
                "wrong-type-text.yaml",
                "format-version-2.yaml",
                "no-circuit.yaml",
                "missing-required.yaml",
                "passage-without-bore.yaml",
                "too-long-name.yaml"
            })
    void structuralFaultsFailAJsonSchemaValidatorToo(String file) throws IOException {
        assertFalse(schema().validate(json(Path.of("src/test/resources/bad-cases", file)))
                .isEmpty());
    }

    @Test
    void everyFieldHasADescriptionAndAnOrderOfItsOwn() throws IOException {
        walk(catalog(), "");
    }

    private static void walk(JsonNode node, String path) {
        assertFalse(node.path("description").asText().isBlank(), path + " has no description");
        int before = 0;
        for (var property : node.path("properties").properties()) {
            int order = property.getValue().path("x-order").asInt();
            assertTrue(order > before, path + "." + property.getKey() + " is out of order");
            before = order;
            walk(property.getValue(), path + "." + property.getKey());
        }
        if (node.has("items") && !path.endsWith("quantity")) {
            walk(node.get("items"), path + "[]");
        }
    }

    @Test
    void everyQuantityHasAKindAndLimitsThatCanBeRead() {
        int quantities = count(CaseSchema.ROOT);
        assertTrue(quantities > 120, "only " + quantities + " quantities were found in the catalog");
    }

    private static int count(SchemaNode node) {
        int count = 0;
        if (node.type() == SchemaNode.Type.QUANTITY) {
            count++;
            assertTrue(node.kind().isPresent());
            if (node.kind().get() != Kind.LENGTH || !node.description().startsWith("How much to add")) {
                assertTrue(node.lower().isPresent(), node.description());
            }
            if (node.lower().isPresent() && node.upper().isPresent()) {
                assertTrue(node.lower().get().si() < node.upper().get().si(), node.description());
            }
        }
        for (SchemaNode below : node.properties().values()) {
            count += count(below);
        }
        return count + node.items().map(CaseSchemaTest::count).orElse(0);
    }
}
