package org.coldpleat.shared.casefile.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class SampleCaseTest {
    private static final Path SAMPLE = Path.of("src/test/resources/cases/ridge-hut.yaml");

    private static CaseDocument sample() {
        CaseReading reading = CaseReader.read(SAMPLE);
        assertEquals(
                List.of(), reading.problems().stream().map(CaseProblem::text).toList());
        return reading.document().orElseThrow();
    }

    private static Section firstCandidate() {
        return sample().root().sections("candidates").get(0);
    }

    @Test
    void readsWithoutProblems() {
        assertEquals("Ridge hut generator", sample().root().text("title").orElseThrow());
        assertEquals(64, sample().digest().length());
    }

    @Test
    void keepsUnitsSpreadsAndProvenance() {
        Measured opening = firstCandidate()
                .section("bypass")
                .orElseThrow()
                .quantity("openingPressure")
                .orElseThrow();
        assertEquals(Provenance.PRINTED, opening.provenance());
        assertEquals(Spread.RECTANGULAR, opening.spread());
        assertEquals(12 * 6894.757293168, opening.low(), 1e-5);
        Section engine = sample().root().section("engine").orElseThrow();
        Measured share = engine.section("gallery")
                .orElseThrow()
                .section("hotReading")
                .orElseThrow()
                .quantity("bearingShare")
                .orElseThrow();
        assertEquals(Provenance.TYPICAL, share.provenance());
        assertEquals(0.70, share.value(), 1e-12);
        assertEquals(
                Provenance.MAKER,
                engine.section("pump")
                        .orElseThrow()
                        .quantity("turnsPerEngineTurn")
                        .orElseThrow()
                        .provenance());
    }

    @Test
    void takesListOfReadingsWithTheUnitBehind() {
        Measured thickness = firstCandidate()
                .section("medium")
                .orElseThrow()
                .quantity("thickness")
                .orElseThrow();
        assertEquals(3, thickness.repeats());
        assertEquals("[0.78, 0.81, 0.80] mm", thickness.written());
    }

    @Test
    void tellsTypicalAskedFromNotGiven() {
        Section flap = firstCandidate().section("antiDrainFlap").orElseThrow();
        assertTrue(flap.typicalAsked("modulus"));
        assertTrue(flap.quantity("modulus").isEmpty());
        assertFalse(flap.typicalAsked("openingPressure"));
        assertTrue(flap.flag("present").orElseThrow());
    }

    @Test
    void namesPathsAndLines() {
        Section medium = firstCandidate().section("medium").orElseThrow();
        assertEquals("candidates[0].medium", medium.path());
        assertEquals("candidates[0].medium.thickness", medium.pathOf("thickness"));
        assertEquals(74, medium.lineOf("thickness"));
        assertEquals(
                "dome",
                firstCandidate()
                        .section("bypass")
                        .orElseThrow()
                        .choice("position")
                        .orElseThrow());
    }

    @Test
    void listsEveryQuantityInFileOrder() {
        List<String> paths = new ArrayList<>(sample().quantities().keySet());
        assertEquals("oil.points[0].temperature", paths.get(0));
        assertEquals("candidates[0].medium.ratings[0].efficiency", paths.get(paths.size() - 1));
        assertTrue(paths.contains("candidates[0].medium.strip.allowances[0].by"));
    }

    @Test
    void refusesToBeAskedForWhatTheCatalogDoesNotHave() {
        Section candidate = firstCandidate();
        assertThrows(IllegalArgumentException.class, () -> candidate.text("colour"));
        assertThrows(IllegalArgumentException.class, () -> candidate.quantity("name"));
    }
}
