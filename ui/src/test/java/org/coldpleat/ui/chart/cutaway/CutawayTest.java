package org.coldpleat.ui.chart.cutaway;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawing shows what the sheet and the operating point say. */
class CutawayTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final OpenedCase CASE =
            CaseService.standard().open(HUT).opened().orElseThrow();
    private static final double LITER_A_MINUTE = 1 / 60000.0;

    private static CutawayDrawing drawing(String candidate, double liters, double kelvin) {
        PointResult point =
                CASE.pointAtFlow(candidate, liters * LITER_A_MINUTE, kelvin).now();
        return Cutaway.of(CASE.sheet(candidate), point, point.flow(), UnitSystem.METRIC);
    }

    private static double widest(CutawayDrawing drawing, Role role) {
        return drawing.pieces().stream()
                .filter(piece -> piece.role() == role)
                .mapToDouble(Piece::width)
                .max()
                .orElse(0);
    }

    @Test
    void canHasItsMeasuredSize() {
        Piece can = drawing("Slate", 5, 363).pieces().stream()
                .filter(piece -> piece.role() == Role.CAN)
                .findFirst()
                .orElseThrow();
        assertEquals(76, extent(can.x()), 1e-9);
        assertEquals(88, extent(can.y()), 1e-9);
    }

    private static double extent(double[] values) {
        return Arrays.stream(values).max().orElseThrow()
                - Arrays.stream(values).min().orElseThrow();
    }

    @Test
    void starHasTwoLegsAndTwoFoldsAPleat() {
        // two pack halves in the cut along the axis, 4 pieces a pleat, ten legs from near
        assertEquals(2 + 4 * 53 + 10, drawing("Slate", 5, 363).count(Role.MEDIUM));
        assertEquals(2 + 4 * 70 + 10, drawing("Moss", 5, 363).count(Role.MEDIUM));
    }

    @Test
    void bypassStreamShowsOnlyWhenTheValveIsOpenAndWidensWithItsShare() {
        CutawayDrawing warm = drawing("Slate", 5, 363);
        assertEquals(0, warm.count(Role.BYPASS_STREAM));
        CutawayDrawing cold = drawing("Slate", 5, 258);
        assertTrue(cold.count(Role.BYPASS_STREAM) > 0);
        PointResult point = CASE.pointAtFlow("Slate", 5 * LITER_A_MINUTE, 258).now();
        double share = point.bypass().orElseThrow().share();
        double wide = widest(cold, Role.BYPASS_STREAM);
        double filtered = widest(cold, Role.FILTERED_STREAM);
        assertEquals(share, wide / (wide + filtered), 1e-9);
    }

    @Test
    void sameInputGivesTheSameSvg(@TempDir Path folder) throws Exception {
        Path one = folder.resolve("one.svg");
        Path two = folder.resolve("two.svg");
        ChartFiles.writeSvg(drawing("Fjord", 5, 258), one);
        ChartFiles.writeSvg(drawing("Fjord", 5, 258), two);
        assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    }

    @Test
    void whatIsNotMeasuredIsDashedAndSaysSo() {
        List<Section> sheets =
                CaseReader.read(HUT).document().orElseThrow().root().sections("candidates");
        PointResult point = CASE.pointAtFlow("Slate", 5 * LITER_A_MINUTE, 300).now();
        CutawayDrawing full = Cutaway.of(sheets.get(0), point, point.flow(), UnitSystem.METRIC);
        assertEquals(
                0, full.labels().stream().filter(label -> !label.measured()).count());
        Section launch = CaseReader.read(Path.of("../demo-cases/harbour-launch/case.yaml"))
                .document()
                .orElseThrow()
                .root()
                .sections("candidates")
                .get(0);
        CutawayDrawing gaps = Cutaway.of(launch, point, point.flow(), UnitSystem.METRIC);
        List<Label> unknown =
                gaps.labels().stream().filter(label -> !label.measured()).toList();
        assertTrue(unknown.stream().anyMatch(label -> label.text().contains("not measured")), unknown.toString());
        assertTrue(gaps.pieces().stream().anyMatch(piece -> piece.role() == Role.RUBBER && !piece.measured()));
    }
}
