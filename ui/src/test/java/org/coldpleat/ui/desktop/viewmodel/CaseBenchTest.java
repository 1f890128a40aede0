package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Editing a case in its own text. */
class CaseBenchTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final String PLEATS = "candidates[0].pleats.count";

    private static CaseBench bench() throws IOException {
        return CaseBench.open(CaseService.standard(), HUT);
    }

    private static SheetRow row(CaseBench bench, String path) {
        return bench.sheet("candidates[0]").stream()
                .filter(one -> one.path().equals(path) && one.type() == SheetRow.Type.VALUE)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTypedValueChangesOnlyItsOwnPlaceInTheText() throws IOException {
        CaseBench bench = bench();
        String before = bench.draft().text();
        assertTrue(bench.edit(PLEATS, "60"));
        assertEquals("60", row(bench, PLEATS).typed());
        assertEquals(
                before.replace("pleats: {count: 53,", "pleats: {count: 60,"),
                bench.draft().text());
        assertTrue(bench.isChanged());
        assertTrue(bench.isUnderstood());
    }

    @Test
    void everyStepCanBeTakenBackAndTakenAgain() throws IOException {
        CaseBench bench = bench();
        String before = bench.draft().text();
        bench.edit(PLEATS, "60");
        bench.edit("candidates[0].outside.diameter", "3.1 in");
        bench.copyCandidate(1);
        bench.removeEntry("candidates[0].medium.ratings[0]");
        String after = bench.draft().text();
        for (int i = 0; i < 4; i++) {
            bench.undo();
        }
        assertEquals(before, bench.draft().text());
        assertFalse(bench.canUndo());
        assertFalse(bench.isChanged());
        for (int i = 0; i < 4; i++) {
            bench.redo();
        }
        assertEquals(after, bench.draft().text());
    }

    @Test
    void whatIsNotUnderstoodStaysInTheDraftWithItsProblem() throws IOException {
        CaseBench bench = bench();
        for (String bad : new String[] {"plenty", "12 kPa", "}", "\"", "#", "5, height: 3 mm"}) {
            assertTrue(bench.edit(PLEATS, bad), bad);
            assertEquals(bad, row(bench, PLEATS).typed());
            assertFalse(row(bench, PLEATS).problem().isEmpty(), bad);
            assertFalse(bench.isUnderstood());
            assertTrue(bench.opened().isPresent());
        }
        bench.edit(PLEATS, "54");
        assertEquals("", row(bench, PLEATS).problem());
        assertTrue(bench.isUnderstood());
    }

    @Test
    void aSheetHasEveryFieldInTheOrderOfTheWork() {
        CaseBench bench = CaseBench.blank(CaseService.standard());
        int number = bench.addCandidate("New filter");
        List<String> paths = bench.sheet("candidates[" + number + "]").stream()
                .filter(row -> row.type() == SheetRow.Type.VALUE)
                .map(SheetRow::path)
                .toList();
        assertTrue(paths.size() > 100, "fields: " + paths.size());
        assertTrue(paths.indexOf("candidates[0].outside.diameter") < paths.indexOf("candidates[0].bypass.position"));
        assertTrue(paths.indexOf("candidates[0].bypass.position") < paths.indexOf("candidates[0].basePlate.thickness"));
        assertTrue(paths.indexOf("candidates[0].pleats.count") < paths.indexOf("candidates[0].medium.family"));
        assertEquals("candidates[0].notes", paths.get(paths.size() - 1));
        assertEquals(1, bench.addCandidate("New filter"));
        assertEquals(List.of("New filter", "New filter 2"), bench.candidates());
    }

    @Test
    void aFileBrokenByHandOpensAndSaysWhatIsASideNow(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, Files.readString(HUT).replace("title: Ridge hut generator", "title: {a: [b"));
        CaseBench bench = CaseBench.open(CaseService.standard(), file);
        assertFalse(bench.setAside().isEmpty());
        assertTrue(bench.isChanged());
        assertEquals(List.of("Slate", "Copper", "Fjord", "Moss"), bench.candidates());
        bench.edit("title", "Hut");
        assertTrue(bench.isUnderstood(), bench.problems().toString());
    }

    @Test
    void savingWritesTheDraftAndUnmarksIt(@TempDir Path folder) throws IOException {
        CaseBench bench = bench();
        bench.edit("candidates[1].name", "Brass");
        Path file = folder.resolve("new.yaml");
        bench.save(file);
        assertFalse(bench.isChanged());
        assertEquals(Optional.of(file), bench.file());
        assertEquals(bench.draft().text(), Files.readString(file));
    }
}
