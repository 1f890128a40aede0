package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps the reference of the JSON outputs, {@code docs/json.md}, the same as the schemas it is written from. */
class JsonReferenceTest {
    private static final Path REFERENCE = Path.of("..", "docs", "json.md");
    private static final Path SCHEMAS = Path.of("src", "main", "resources", "org", "coldpleat", "ui", "commandline");
    private static final String ENDING = ".schema.json";
    private static final String INTRODUCTION = """
            # JSON outputs

            Every command with `--format json` writes one JSON document for other programs. This page is written from the
            schemas (JSON Schema 2020-12) that lie beside the commands in `ui/src/main/resources`; each output is held
            against its schema in the tests.

            Rules for all of them: coherent SI whatever `--units` says, with the unit at the end of the name
            (`hotPressureDrop_Pa`, `speed_rev_s`); `_u` at the end marks a standard uncertainty, not a half-width; shares
            and chances run from 0 to 1; a number that is not known is null, never 0. Fields of the engine are left out
            where there is none. `schemaVersion` names the schema; if a field changes its meaning, the schema gets a new
            version.
            """;

    @Test
    void referenceIsWrittenFromTheSchemas() throws IOException {
        String wanted = reference();
        if (Boolean.getBoolean("coldpleat.writeReference")) {
            Files.writeString(REFERENCE, wanted);
        }
        assertEquals(
                wanted,
                Files.readString(REFERENCE),
                "docs/json.md is not what the schemas say; write it anew with"
                        + " mvn -pl ui -am test -Dtest=JsonReferenceTest -Dsurefire.failIfNoSpecifiedTests=false"
                        + " -DargLine=-Dcoldpleat.writeReference=true");
    }

    @Test
    void everyFieldIsDescribed() throws IOException {
        List<String> bare = new ArrayList<>();
        for (Path schema : schemas()) {
            JsonNode root = read(schema);
            bare(root, root, schema.getFileName().toString(), bare);
        }
        assertEquals(List.of(), bare);
    }

    private static void bare(JsonNode root, JsonNode node, String path, List<String> bare) {
        for (Map.Entry<String, JsonNode> entry : fields(root, node).properties()) {
            String below = path + " " + entry.getKey();
            if (entry.getValue().path("description").asText().isEmpty()) {
                bare.add(below);
            }
            bare(root, entry.getValue(), below, bare);
            bare(root, entry.getValue().path("items"), below, bare);
        }
    }

    /** The fields of a node, of what it refers to, or of the one of its alternatives that has any. */
    private static JsonNode fields(JsonNode root, JsonNode node) {
        JsonNode found = target(root, node).path("properties");
        for (JsonNode way : node.path("oneOf")) {
            found = found.isMissingNode() ? fields(root, way) : found;
        }
        return found;
    }

    private static JsonNode target(JsonNode root, JsonNode node) {
        return node.has("$ref") ? root.at(node.path("$ref").asText().substring(1)) : node;
    }

    private static String reference() throws IOException {
        StringBuilder text = new StringBuilder(INTRODUCTION);
        for (Path path : schemas()) {
            JsonNode schema = read(path);
            String name = path.getFileName().toString().replace(ENDING, "");
            text.append("\n## `").append(name).append("`\n\n");
            text.append(schema.path("title").asText()).append(". ");
            text.append(schema.path("description").asText().strip()).append("\n\n");
            text.append("| field | type | what |\n| --- | --- | --- |\n");
            rows(schema, schema, "", text);
        }
        return text.toString();
    }

    private static void rows(JsonNode root, JsonNode node, String path, StringBuilder text) {
        for (Map.Entry<String, JsonNode> entry : fields(root, node).properties()) {
            String field = path + entry.getKey();
            text.append("| `").append(field).append("` | ").append(type(root, entry.getValue()));
            text.append(" | ")
                    .append(entry.getValue().path("description").asText())
                    .append(" |\n");
            rows(root, entry.getValue(), field + ".", text);
            rows(root, entry.getValue().path("items"), field + "[].", text);
        }
    }

    /** What stands there, in words: the type, the words allowed, or the constant. */
    private static String type(JsonNode root, JsonNode node) {
        if (node.has("$ref")) {
            return type(root, target(root, node));
        }
        if (node.has("const")) {
            return "always `" + node.path("const").asText() + "`";
        }
        if (node.has("enum")) {
            List<String> words = new ArrayList<>();
            node.path("enum").forEach(word -> words.add("`" + word.asText() + "`"));
            return String.join(", ", words);
        }
        if (node.has("oneOf")) {
            List<String> ways = new ArrayList<>();
            node.path("oneOf").forEach(way -> ways.add(type(root, way)));
            return String.join(" or ", ways);
        }
        if (node.path("items").isObject()) {
            return "list of " + type(root, node.path("items"));
        }
        List<String> types = new ArrayList<>();
        if (node.path("type").isArray()) {
            node.path("type").forEach(word -> types.add(word.asText()));
        } else {
            types.add(node.path("type").asText());
        }
        return String.join(" or ", types);
    }

    private static JsonNode read(Path schema) throws IOException {
        return new ObjectMapper().readTree(Files.readString(schema));
    }

    private static List<Path> schemas() throws IOException {
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            return files.filter(path -> path.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        }
    }
}
