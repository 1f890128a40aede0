package org.coldpleat.shared.casefile.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Keeps the reference of the case file, {@code docs/case-file.md}, the same as the catalog it is written from. */
class CaseFileReferenceTest {
    private static final Path REFERENCE = Path.of("..", "docs", "case-file.md");
    private static final String INTRODUCTION = """
            # The case file

            One YAML file holds a case: an oil, an engine or a flow stand or both, and the filters to look at. Start from
            one of the demo cases; `./coldpleat check CASE` says what is wrong, line by line, and echoes what was
            understood. This page is written from the catalog `case-v1.schema.json`, which is also a JSON Schema.

            ## How quantities are written

            As people write them, always with a unit: `1.45 in`, `2-3/8"`, `36.8 mm`, `60,5 mm`, `41F`, `-10 °C`.

            | form | meaning |
            | --- | --- |
            | `36.8 mm ± 0.2 mm`, `36.8 ± 0.2 mm`, `36.8 mm ± 1 %` | any value in the interval is as likely as any other |
            | `150 kPa x/÷ 1.9`, `150 kPa x/ 1.9` | 95 of 100 lie between the value divided and multiplied by the factor |
            | `12 to 15 psi`, `12-15 psi` | the same, by its ends; a range on a box is an interval |
            | `[36.7, 36.9, 36.8] mm` | readings: the mean, and the 95 % band of the mean |
            | `0.76 mm (typical)` | where a value comes from: measured, printed, maker, published, typical, guessed |
            | `typical` | asks for the typical range of the trade where one is offered (marked T below) |
            | `{value: 0.76 mm, plusMinus: 0.02 mm, provenance: measured, note: "..."}` | all of it spelled out |

            A value without a spread gets the usual one of its bench reading; see `default-spreads.csv` in the model. What
            is left out or blank is unknown, never zero: a part that is not described is left out of the flow path with a
            notice. Inside `{...}` a decimal comma ends the entry: write a point there, or put the value on its own line.
            """;

    @Test
    void referenceIsWrittenFromTheCatalog() throws IOException {
        String wanted = reference();
        if (Boolean.getBoolean("coldpleat.writeReference")) {
            Files.writeString(REFERENCE, wanted);
        }
        assertEquals(
                wanted,
                Files.readString(REFERENCE),
                "docs/case-file.md is not what the catalog says; write it anew with"
                        + " mvn -pl shared test -Dtest=CaseFileReferenceTest -DargLine=-Dcoldpleat.writeReference=true");
    }

    private static String reference() throws IOException {
        StringBuilder text = new StringBuilder(INTRODUCTION);
        try (InputStream schema = CaseSchema.class.getResourceAsStream("case-v1.schema.json")) {
            section(new ObjectMapper().readTree(schema), "", text);
        }
        return text.toString();
    }

    private static void section(JsonNode node, String path, StringBuilder text) {
        text.append("\n## ")
                .append(path.isEmpty() ? "The top of the file" : "`" + path + "`")
                .append("\n\n");
        text.append(node.path("description").asText()).append("\n\n");
        text.append("| key | what | how |\n| --- | --- | --- |\n");
        Set<String> required = new TreeSet<>();
        node.path("required").forEach(key -> required.add(key.asText()));
        for (Map.Entry<String, JsonNode> entry : node.path("properties").properties()) {
            text.append("| `").append(entry.getKey()).append('`');
            text.append(required.contains(entry.getKey()) ? " (needed)" : "").append(" | ");
            text.append(entry.getValue().path("description").asText()).append(" | ");
            text.append(how(entry.getValue())).append(" |\n");
        }
        for (Map.Entry<String, JsonNode> entry : node.path("properties").properties()) {
            String below = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
            if (entry.getValue().has("properties")) {
                section(entry.getValue(), below, text);
            } else if (entry.getValue().path("items").has("properties")) {
                section(entry.getValue().path("items"), below + "[]", text);
            }
        }
    }

    private static String how(JsonNode node) {
        if (node.has("x-kind")) {
            String kind = node.path("x-kind").asText().toLowerCase(Locale.ROOT).replace('_', ' ');
            StringBuilder text = new StringBuilder(kind);
            String low = node.has("x-min")
                    ? "from " + node.path("x-min").asText()
                    : node.has("x-above") ? "above " + node.path("x-above").asText() : "";
            String high = node.has("x-max") ? " to " + node.path("x-max").asText() : "";
            text.append(low.isEmpty() && high.isEmpty() ? "" : ", " + (low + high).strip());
            text.append(node.path("x-typical").asBoolean() ? ", T" : "");
            return text.toString();
        }
        if (node.has("enum")) {
            StringBuilder words = new StringBuilder();
            node.path("enum")
                    .forEach(word -> words.append(words.isEmpty() ? "" : ", ").append(word.asText()));
            return "one of " + words;
        }
        if (node.path("items").has("properties")) {
            return "list, see below";
        }
        return node.has("properties") ? "group, see below" : words(node.path("type"));
    }

    private static String words(JsonNode type) {
        String first = type.isArray() ? type.get(0).asText() : type.asText();
        return switch (first) {
            case "string" -> "text";
            case "boolean" -> "true or false";
            case "integer" -> "whole number";
            default -> first;
        };
    }
}
