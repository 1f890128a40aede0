package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is typed into a field stays there as it was typed, and can be taken back. */
class HostileTextTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final List<String> SHEETS =
            List.of("", "oil", "engine", "flowStand", "temperatures", "start", "duty", "candidates[0]");

    /** Longest time for one edit of any field; a hundred times what a slow machine needs. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private static final List<String> TEXTS = List.of(
            "9".repeat(3000),
            "NaN",
            "Infinity mm",
            "-12 mm",
            "7 parsecs",
            "\uD83D\uDE00 \uD83D\uDEE2\uFE0F",
            "\u202E12 mm",
            "\u0645\u0631\u0634\u062d 12",
            "': { [ ] } # & * ! | > % @ `",
            "1e999 mm",
            "- a: b",
            "\"half open");

    @TempDir
    private Path folder;

    @Test
    void aFieldOfEveryKindKeepsWhatIsTyped() throws IOException {
        Set<String> seen = new HashSet<>();
        int typed =
                typeInto(row -> seen.add(row.field().type() + " " + row.field().unit()));
        assertTrue(typed >= TEXTS.size(), "fields: " + typed);
    }

    @Test
    @Tag("nightly")
    void everyFieldKeepsWhatIsTyped() throws IOException {
        int typed = typeInto(row -> true);
        assertTrue(typed > 150, "fields: " + typed);
    }

    /** Types into the fields that are asked for, and says how many there were. */
    private static int typeInto(Predicate<SheetRow> wanted) throws IOException {
        CaseBench bench = CaseBench.open(CaseService.standard(), HUT);
        String before = bench.draft().text();
        List<String> fields = new ArrayList<>();
        for (String sheet : SHEETS) {
            bench.sheet(sheet).stream()
                    .filter(row -> row.type() == SheetRow.Type.VALUE)
                    .filter(wanted)
                    .map(SheetRow::path)
                    .forEach(fields::add);
        }
        for (int i = 0; i < fields.size(); i++) {
            String field = fields.get(i);
            String text = TEXTS.get(i % TEXTS.size());
            Assertions.assertTimeout(PATIENCE, () -> bench.edit(field, text), field);
            assertEquals(text.strip(), bench.draft().value(field).orElse(""), field);
            bench.undo();
            assertEquals(before, bench.draft().text(), field);
        }
        return fields.size();
    }

    @Test
    void manyOfThemAtOnceLeaveTheCaseWritable() throws IOException {
        typeAtOnce(4);
    }

    @Test
    @Tag("nightly")
    void allOfThemAtOnceLeaveTheCaseWritable() throws IOException {
        typeAtOnce(1);
    }

    /** Types into one field in so many. */
    private void typeAtOnce(int every) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.copy(HUT, file);
        CaseBench bench = CaseBench.open(CaseService.standard(), file);
        List<String> fields = bench.sheet("candidates[0]").stream()
                .filter(row -> row.type() == SheetRow.Type.VALUE)
                .map(SheetRow::path)
                .toList();
        for (int i = 0; i < fields.size(); i += every) {
            bench.edit(fields.get(i), TEXTS.get(i % TEXTS.size()));
        }
        assertFalse(bench.isUnderstood());
        assertFalse(bench.problems().isEmpty());
        bench.save(file);
        CaseBench again = CaseBench.open(CaseService.standard(), file);
        for (int i = 0; i < fields.size(); i += every) {
            assertEquals(
                    TEXTS.get(i % TEXTS.size()).strip(),
                    again.draft().value(fields.get(i)).orElse(""),
                    fields.get(i));
        }
        assertEquals(
                "76 mm", again.draft().value("candidates[1].outside.diameter").orElse("76 mm"));
    }

    @Test
    void aBrokenFileOpensWithItsProblemsAndKeepsWhatCanBeRead() throws IOException {
        Path file = folder.resolve("broken.yaml");
        String text = Files.readString(HUT)
                .replaceFirst("(?m)^oil:", "oil: {{{ broken\noil:")
                .replaceFirst("pleats:", "pleatz:");
        Files.writeString(file, text);
        CaseBench bench = CaseBench.open(CaseService.standard(), file);
        assertFalse(bench.isUnderstood());
        assertFalse(bench.setAside().isEmpty());
        assertTrue(bench.problems().stream().anyMatch(problem -> problem.text().contains("pleatz")));
        assertEquals("Slate", bench.candidates().get(0));
        assertTrue(bench.draft().value("temperatures.from").isPresent());
    }
}
