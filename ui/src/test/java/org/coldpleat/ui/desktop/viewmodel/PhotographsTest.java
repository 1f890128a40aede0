package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of a filter, and widths measured on them. */
class PhotographsTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final double EXACT = 1e-12;

    @TempDir
    private Path folder;

    private CaseBench hut() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.copy(HUT, file);
        return CaseBench.open(CaseService.standard(), file);
    }

    @Test
    void twoEndsAndALengthGiveTheSizeOfAPixel() {
        PictureMeasuring picture = new PictureMeasuring(1280);
        picture.end(100, 50);
        assertTrue(picture.read("0.5 mm", "").scale().isEmpty());
        picture.end(400, 450);
        // 300 across and 400 down are 500 pixels: derived here
        assertEquals(1e-6, picture.read("0.5 mm", "").scale().orElseThrow().pixelSize(), EXACT);
    }

    @Test
    void theWidthOfTheFieldIsAScaleToo() {
        PictureMeasuring picture = new PictureMeasuring(1280);
        double pixel = picture.read("", "1.5 mm").scale().orElseThrow().pixelSize();
        // 1.5 mm over 1280 pixels are 1.17 micrometers: derived here
        assertEquals(1.17e-6, pixel, 0.005e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"200x", "200 ×", "x400", "200", "1,25x"})
    void aMagnificationAloneIsNoScale(String typed) {
        PictureMeasuring.Reading reading = new PictureMeasuring(1280).read("", typed);
        assertTrue(reading.scale().isEmpty());
        assertEquals(
                "bench.fiber.magnificationOnly", reading.problem().orElseThrow().code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-3 mm", "0 mm", "NaN mm", "3 psi", "wide", "\u202e3 mm"})
    void whatIsNoLengthIsNoScale(String typed) {
        PictureMeasuring.Reading reading = new PictureMeasuring(1280).read(typed, "");
        assertFalse(reading.isUsable());
        assertEquals("bench.fiber.noScale", reading.problem().orElseThrow().code());
    }

    @Test
    void pairsGiveWidthsAndEveryClickCanBeTakenBack() {
        PictureMeasuring picture = new PictureMeasuring(1000);
        picture.edge(0, 0);
        picture.edge(3, 4);
        picture.edge(10, 10);
        assertTrue(picture.marks().waiting().isPresent());
        picture.edge(10, 17);
        assertArrayEquals(new double[] {5, 7}, picture.marks().widths(), EXACT);
        PictureMeasuring.Reading reading = picture.read("", "1 mm");
        assertEquals(6, reading.mean(), EXACT);
        assertEquals(Math.sqrt(2), reading.deviation(), EXACT);
        assertEquals(7, reading.largest(), EXACT);
        int steps = 0;
        while (picture.undo()) {
            steps++;
        }
        assertEquals(4, steps);
        assertEquals(PictureMarks.NONE, picture.marks());
    }

    @Test
    void aPictureIsKeptByItsPathFromTheCase() throws IOException {
        CaseBench bench = hut();
        Photographs pictures = new Photographs(bench, 0);
        int before = pictures.files().size();
        Path picture = Files.createDirectories(folder.resolve("shots")).resolve("medium 1.png");
        assertTrue(pictures.attach(picture));
        assertEquals("shots/medium 1.png", pictures.files().get(before));
        assertEquals(Optional.of(picture), pictures.place(before));
        assertTrue(bench.isUnderstood(), bench.problems().toString());
        pictures.detach(before);
        assertEquals(before, pictures.files().size());
    }

    @Test
    void aCaseWithoutAFileTakesNoPicture() {
        CaseBench bench = CaseBench.blank(CaseService.standard());
        bench.addCandidate("Birch");
        assertFalse(new Photographs(bench, 0).attach(folder.resolve("a.png")));
        assertEquals(List.of(), new Photographs(bench, 0).files());
    }

    @Test
    void fibersGoIntoTheSheetAsOneStepAndAreUnderstood() throws IOException {
        CaseBench bench = hut();
        Photographs pictures = new Photographs(bench, 2);
        String before = bench.draft().text();
        PictureMeasuring.Scale scale = new PictureMeasuring.Scale("0.5 mm", 5e-4, 500, false);
        assertTrue(pictures.writeFibers(scale, new double[] {12.34, 15, 9.5}));
        String test = "candidates[2].tests.fiberSizing.";
        assertEquals(3, bench.draft().count(test + "fibers"));
        assertEquals("12.3", bench.draft().value(test + "fibers[0].width").orElseThrow());
        assertEquals("0.5 mm", bench.draft().value(test + "scaleBar").orElseThrow());
        assertTrue(bench.isUnderstood(), bench.problems().toString());
        pictures.writeFibers(new PictureMeasuring.Scale("2 mm", 2e-3, 1280, true), new double[] {8, 9});
        assertEquals(2, bench.draft().count(test + "fibers"));
        assertTrue(bench.draft().value(test + "scaleBar").isEmpty());
        assertTrue(bench.isUnderstood(), bench.problems().toString());
        bench.undo();
        bench.undo();
        assertEquals(before, bench.draft().text());
    }
}
