package org.coldpleat.shared.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of readings with a unit behind them, and texts that only look like one. */
class PlainListsTest {
    private static Map<String, String> read(String text) {
        FileProblems problems = new FileProblems("test");
        Tree tree = TreeBuilder.build(text, problems)
                .orElseThrow(() -> new AssertionError(problems.inFileOrder().toString()));
        Map<String, String> values = new LinkedHashMap<>();
        collect("", (Keys) tree, values);
        return values;
    }

    private static void collect(String head, Keys keys, Map<String, String> values) {
        for (Pair pair : keys.pairs()) {
            String path = head + pair.key().text();
            if (pair.value() instanceof Keys below) {
                collect(path + ".", below, values);
            } else if (pair.value() instanceof Scalar scalar) {
                values.put(path, scalar.text().strip());
            } else {
                values.put(path, ((Tree.Items) pair.value()).raw());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '^', textBlock = """
            a: [1, 2] mm                          | a  | [1, 2] mm
            a: [1, 2]                             | a  | [1, 2]
            a: [1, 2] mm # thrice                 | a  | [1, 2] mm
            b: {a: [1, 2] mm, c: 3}               | b.a | [1, 2] mm
            b: {a: [1, 2], c: 3}                  | b.a | [1, 2]
            b: {a: "}", c: [1, 2] mm}             | b.c | [1, 2] mm
            b: {a: "x # y", c: [1, 2] mm}         | b.c | [1, 2] mm
            b: {a: 'it''s # }', c: [1, 2] mm, d: 1} | b.c | [1, 2] mm
            title: "x: [1] mm"                    | title | x: [1] mm
            title: 'x: [1] mm'                    | title | x: [1] mm
            title: "say \\"x: [1] mm\\""          | title | say "x: [1] mm"
            b: {note: "x: [1] mm, more", c: 3}    | b.note | x: [1] mm, more
            "a": [1, 2] mm                        | a  | [1, 2] mm
            a: [2-3/8", 2-1/2"]                   | a  | [2-3/8", 2-1/2"]
            """)
    void listsAreReadAndQuotesAreLeftAlone(String text, String path, String value) {
        assertEquals(value, read(text).get(path));
    }

    @Test
    void aQuotedTextOverSeveralLinesIsLeftAlone() {
        assertEquals(
                "one x: [1] mm two",
                read("notes: \"one\n  x: [1] mm\n  two\"\na: 1\n").get("notes"));
    }

    @Test
    void aTextBlockIsLeftAloneAndEndsAtTheNextKey() {
        Map<String, String> values = read("notes: |\n  x: [1] mm\n\n  y\na: [1, 2] mm\n");
        assertEquals("x: [1] mm\n\ny", values.get("notes"));
        assertEquals("[1, 2] mm", values.get("a"));
    }

    @Test
    void aTextBlockInAListEntryEndsAtTheNextKeyOfTheEntry() {
        FileProblems problems = new FileProblems("test");
        Tree tree = TreeBuilder.build("c:\n  - notes: >\n      words\n    a: [1, 2] mm\n", problems)
                .orElseThrow(() -> new AssertionError(problems.inFileOrder().toString()));
        Tree list = ((Keys) tree).pairs().get(0).value();
        Keys entry = (Keys) ((Tree.Items) list).items().get(0);
        assertEquals("[1, 2] mm", ((Scalar) entry.pairs().get(1).value()).text());
    }

    @Test
    void spansPointIntoTheTextAsWritten() {
        String text = "a: [1', 2] mm # é\r\nb: {c: [3, 4] µm, d: \"𝛼\", e: x y}\r\nf: {g: 1}\r\n";
        FileProblems problems = new FileProblems("test");
        Keys root = (Keys) TreeBuilder.build(text, problems).orElseThrow();
        Keys b = (Keys) root.pairs().get(1).value();
        assertEquals("[1', 2] mm", slice(text, root.pairs().get(0).value()));
        assertEquals("[3, 4] µm", slice(text, b.pairs().get(0).value()));
        assertEquals("\"𝛼\"", slice(text, b.pairs().get(1).value()));
        assertEquals("x y", slice(text, b.pairs().get(2).value()));
        assertEquals("{g: 1}", slice(text, root.pairs().get(2).value()));
        assertEquals("b", slice(text, root.pairs().get(1).key()));
        assertTrue(problems.isEmpty());
    }

    private static String slice(String text, Tree tree) {
        return text.substring(tree.start(), tree.end());
    }
}
