package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Test;

/** Editing a case in its own text. */
class CaseBenchTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final String PLEATS = "candidates[0].pleats.count";

    private static CaseBench bench() throws IOException {
        return new CaseBench(CaseService.standard(), HUT.toString(), Files.readString(HUT));
    }

    private static SheetField field(CaseBench bench, String path) {
        return bench.fields("Slate").stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTypedValueChangesOnlyItsOwnPlaceInTheText() throws IOException {
        CaseBench bench = bench();
        String before = bench.text();
        assertTrue(bench.edit(PLEATS, "60"));
        assertEquals("60", field(bench, PLEATS).written());
        assertEquals(before.replace("pleats: {count: 53,", "pleats: {count: 60,"), bench.text());
        assertTrue(bench.isChanged());
    }

    @Test
    void everyStepCanBeTakenBackAndTakenAgain() throws IOException {
        CaseBench bench = bench();
        String before = bench.text();
        bench.edit(PLEATS, "60");
        bench.edit("candidates[0].outside.diameter", "3.1 in");
        String after = bench.text();
        bench.undo();
        bench.undo();
        assertEquals(before, bench.text());
        assertFalse(bench.canUndo());
        bench.redo();
        bench.redo();
        assertEquals(after, bench.text());
    }

    @Test
    void badInputKeepsWhatWasTypedAndTheCase() throws IOException {
        CaseBench bench = bench();
        String before = bench.text();
        for (String bad : new String[] {"plenty", "12 kPa", "", "}", "\"", "#", "5, height: 3 mm"}) {
            assertFalse(bench.edit(PLEATS, bad), bad);
            assertEquals(bad, field(bench, PLEATS).written());
            assertFalse(field(bench, PLEATS).problem().isEmpty() && !bad.isEmpty(), bad);
            assertEquals(before, bench.text());
        }
        assertTrue(bench.edit(PLEATS, "54"));
        assertEquals("", field(bench, PLEATS).problem());
    }

    @Test
    void labelsAreWords() {
        assertEquals("base plate, inlet holes, diameter", CaseBench.words("basePlate.inletHoles.diameter"));
    }
}
