package org.coldpleat.shared.casefile.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.casefile.catalog.CasePath;
import org.coldpleat.shared.casefile.catalog.CaseSchema;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Random edits of whole cases: each changes just what it says, and no remark is lost. */
class CaseDraftPropertyTest {
    private static final String[] TYPED = {
        "1.45in",
        "60,5 mm",
        "[36.7, 36.9] mm",
        "[1; 2] µm",
        "typical",
        "",
        "12 to 15 psi",
        "a: b",
        "# no",
        "x # y",
        "}",
        "{",
        "]",
        "[",
        "- 5",
        "-5 mm",
        "'",
        "\"",
        "it's",
        "say \"x\"",
        "null",
        "~",
        "yes",
        "2-3/8\"",
        "a,b",
        "a, b: c",
        "x: [1] mm",
        "&a",
        "*b",
        "!tag",
        "%",
        "@x",
        "`",
        "|",
        ">",
        "? k",
        "two\nlines",
        "tab\there",
        "𝛼 ü",
        "\\",
        "\\n",
        "=1+2",
        "...",
        "---",
        "0.76 mm (typical)",
        ":",
        "a:",
        ":b",
        "?",
        "-",
        "#",
        "\u2028",
        "\ufeff",
        "\ud800",
        "1_000",
        "<<"
    };

    @ParameterizedTest
    @CsvSource({"demo-cases/ridge-hut-generator, 1", "demo-cases/clinic-van, 4", "NOTHING, 6"})
    void everyEditIsExactlyThatEdit(String folder, long seed) throws IOException {
        edit(folder, seed, 60);
    }

    @ParameterizedTest
    @Tag("nightly")
    @CsvSource({
        "demo-cases/ridge-hut-generator, 1",
        "demo-cases/harbour-launch, 2",
        "demo-cases/half-the-area, 3",
        "demo-cases/clinic-van, 4",
        "demo-cases/clinic-van, 5",
        "NOTHING, 6",
        "NOTHING, 7",
        "demo-cases/half-the-area, 8",
        "demo-cases/half-the-area, 9",
        "demo-cases/harbour-launch, 10",
        "demo-cases/harbour-launch, 11",
        "demo-cases/half-the-area, 12"
    })
    void everyOfManyEditsIsExactlyThatEdit(String folder, long seed) throws IOException {
        edit(folder, seed, 250);
    }

    private static void edit(String folder, long seed, int times) throws IOException {
        Random random = new Random(seed);
        String text = folder.equals("NOTHING")
                ? "formatVersion: 1\n"
                : remarked(Files.readString(Path.of("..", folder, "case.yaml")), random);
        CaseDraft draft = CaseDraft.open(folder, text).draft();
        assertEquals(text, draft.text());
        List<CaseDraft> steps = new ArrayList<>(List.of(draft));
        for (int i = 0; i < times; i++) {
            CaseDraft before = steps.get(i);
            CaseDraft after = edit(before, random);
            assertEquals(
                    after.values(),
                    CaseDraft.open("again", after.text()).draft().values());
            steps.add(after);
        }
        assertEquals(text, steps.get(0).text());
    }

    private static CaseDraft edit(CaseDraft draft, Random random) {
        int what = random.nextInt(10);
        if (what < 6) {
            return set(draft, field(draft, random), TYPED[random.nextInt(TYPED.length)]);
        }
        List<String> lists = new ArrayList<>();
        lists(draft, CaseSchema.ROOT, new CasePath(List.of()), lists);
        String list = lists.get(random.nextInt(lists.size()));
        int count = draft.count(list);
        int entry = count == 0 ? 0 : random.nextInt(count);
        return switch (count == 0 ? 6 : what) {
            case 6 -> {
                CaseDraft after = draft.add(list);
                assertEquals(draft.values(), after.values(), list);
                assertEquals(count + 1, after.count(list));
                keepsRemarks(draft, after);
                yield after;
            }
            case 7 -> {
                CaseDraft after = draft.remove(list, entry);
                assertEquals(
                        renumbered(draft.values(), list, n -> n == entry ? -1 : n < entry ? n : n - 1), after.values());
                yield after;
            }
            case 8 -> {
                int to = random.nextInt(count);
                CaseDraft after = draft.move(list, entry, to);
                List<Integer> order = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    order.add(i);
                }
                order.add(to, order.remove(entry));
                assertEquals(renumbered(draft.values(), list, order::indexOf), after.values());
                keepsRemarks(draft, after);
                yield after;
            }
            default -> clear(draft, random);
        };
    }

    private static CaseDraft set(CaseDraft draft, String path, String typed) {
        CaseDraft after = draft.set(path, typed);
        String kept = ScalarText.tidy(typed);
        assertEquals(kept, after.value(path).orElse(""), path + " = " + typed);
        Map<String, String> others = others(draft, path);
        assertEquals(others, others(after, path), () -> path + " = " + typed + "\n" + after.text());
        keepsRemarks(draft, after);
        return after;
    }

    private static CaseDraft clear(CaseDraft draft, Random random) {
        List<String> paths = draft.values().keySet().stream()
                .filter(path -> !path.contains(" ("))
                .toList();
        String path = paths.get(random.nextInt(paths.size()));
        CaseDraft after = draft.clear(path);
        Map<String, String> wanted = new LinkedHashMap<>(draft.values());
        wanted.remove(path);
        assertEquals(wanted, after.values(), path);
        return after;
    }

    /** All values but the one that is written; a quantity counts the same bare and spelled out. */
    private static Map<String, String> others(CaseDraft draft, String path) {
        Map<String, String> others = new LinkedHashMap<>();
        draft.values().forEach((key, value) -> others.put(key.replaceFirst("\\.value$", ""), value));
        others.remove(path.replaceFirst("\\.value$", ""));
        return others;
    }

    private interface Numbers {
        int of(int entry);
    }

    private static Map<String, String> renumbered(Map<String, String> values, String list, Numbers numbers) {
        Map<String, String> out = new LinkedHashMap<>();
        values.forEach((path, value) -> {
            if (!path.startsWith(list + "[")) {
                out.put(path, value);
                return;
            }
            int close = path.indexOf(']', list.length());
            int number = numbers.of(Integer.parseInt(path.substring(list.length() + 1, close)));
            if (number >= 0) {
                out.put(list + "[" + number + path.substring(close), value);
            }
        });
        return out;
    }

    private static void keepsRemarks(CaseDraft before, CaseDraft after) {
        before.text()
                .lines()
                .filter(line -> line.contains("# remark "))
                .map(line -> line.substring(line.indexOf("# remark ")))
                .forEach(remark -> assertTrue(after.text().contains(remark), remark + " lost in\n" + after.text()));
    }

    /** Sprinkles remarks over a case, on lines of their own and behind values. */
    private static String remarked(String text, Random random) {
        StringBuilder out = new StringBuilder();
        int number = 0;
        boolean block = false;
        for (String line : text.split("\n", -1)) {
            block = line.endsWith(">") || (block && (line.isBlank() || line.startsWith("  ")));
            int what = random.nextInt(6);
            if (what == 0 && !block && !line.isBlank()) {
                out.append(line).append("  # remark ").append(number++).append(".\n");
            } else if (what == 1 && !block) {
                out.append(line).append("\n    # remark ").append(number++).append(".\n");
            } else {
                out.append(line).append('\n');
            }
        }
        return out.toString();
    }

    private static String field(CaseDraft draft, Random random) {
        SchemaNode at = CaseSchema.ROOT;
        CasePath path = new CasePath(List.of());
        while (true) {
            List<String> keys = List.copyOf(at.properties().keySet());
            String key = keys.get(random.nextInt(keys.size()));
            path = path.key(key);
            at = at.properties().get(key);
            if (at.type() == SchemaNode.Type.LIST) {
                int count = draft.count(path.toString());
                path = path.entry(random.nextInt(count + 1));
                at = at.items().orElseThrow();
            } else if (at.type() != SchemaNode.Type.SECTION) {
                boolean part = at.type() == SchemaNode.Type.QUANTITY && random.nextInt(5) == 0;
                return (part ? path.key(SchemaNode.QUANTITY_KEYS.get(random.nextInt(4))) : path).toString();
            }
        }
    }

    private static void lists(CaseDraft draft, SchemaNode node, CasePath path, List<String> found) {
        node.properties().forEach((key, below) -> {
            CasePath at = path.key(key);
            if (below.type() == SchemaNode.Type.LIST) {
                found.add(at.toString());
                for (int i = 0; i < draft.count(at.toString()); i++) {
                    lists(draft, below.items().orElseThrow(), at.entry(i), found);
                }
            } else if (below.type() == SchemaNode.Type.SECTION) {
                lists(draft, below, at, found);
            }
        });
    }
}
