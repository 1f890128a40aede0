package org.coldpleat.shared.casefile.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaTextTest {
    private static String catalog() throws IOException {
        try (InputStream in = CaseSchema.class.getResourceAsStream(CaseSchema.RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void catalogIsWhatALibraryReadsOutOfIt() throws IOException {
        assertSame(new ObjectMapper().readTree(catalog()), SchemaText.read(catalog()), "");
    }

    private static void assertSame(JsonNode library, SchemaText own, String path) {
        List<String> keys = new ArrayList<>();
        library.fieldNames().forEachRemaining(keys::add);
        assertEquals(keys, List.copyOf(own.keys().keySet()), path);
        assertEquals(library.isArray() ? library.size() : 0, own.items().size(), path);
        assertEquals(library.isValueNode() ? library.asText() : "", own.word(), path);
        for (String key : keys) {
            assertSame(library.get(key), own.keys().get(key), path + "." + key);
        }
        for (int i = 0; i < own.items().size(); i++) {
            assertSame(library.get(i), own.items().get(i), path + "[" + i + "]");
        }
    }

    @Test
    void limitsAreWhatTheReaderOfQuantitiesMakesOfThem() {
        assertTrue(limits(CaseSchema.ROOT) > 200, "few limits were found in the catalog");
    }

    private static int limits(SchemaNode node) {
        int count = 0;
        for (Optional<SchemaNode.Limit> side : List.of(node.lower(), node.upper())) {
            if (side.isPresent()) {
                SchemaNode.Limit limit = side.get();
                double read = QuantityText.parse(limit.written(), node.kind().orElseThrow(), Provenance.PUBLISHED)
                        .value()
                        .orElseThrow()
                        .value();
                assertEquals(read, limit.si(), limit.written());
                count++;
            }
        }
        for (SchemaNode below : node.properties().values()) {
            count += limits(below);
        }
        return count + node.items().map(SchemaTextTest::limits).orElse(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[1",
                "{\"a\" 1}",
                "{\"a\": 1 \"b\": 2}",
                "{\"a\": }",
                "{a: 1}",
                "\"a",
                "{} {}",
                "[\"\\n\"]"
            })
    void whatIsNoJsonThrows(String text) {
        assertThrows(IllegalArgumentException.class, () -> SchemaText.read(text));
    }
}
