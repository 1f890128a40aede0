package org.coldpleat.ui.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.file.Canvas;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.map.LevelLines;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.chart.map.ShareMapChart;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.service.FixtureCase;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartsTest {
    /** Folder to keep the pictures in for a look at them; none unless asked for. */
    private static final String KEEP = System.getProperty("coldpleat.pictures", "");

    private final Comparison comparison = FixtureCase.comparison(false);
    private final List<StateSheet> sheets = RunCharts.sheets(comparison);

    @TempDir
    private Path folder;

    @BeforeAll
    static void noScreen() {
        System.setProperty("java.awt.headless", "true");
    }

    @Test
    void pressureChartShowsEveryCandidateInKilopascalOverCelsius() {
        StateSheet sheet = sheets.get(0);
        XYPlot plot = TemperatureCharts.pressure(sheet, UnitSystem.METRIC).getXYPlot();
        XYDataset curves = plot.getDataset();
        assertEquals(comparison.candidates().size(), curves.getSeriesCount());
        double[] valve = sheet.candidates().get(0).valveDifference();
        assertEquals(-40, curves.getXValue(0, 0), 1e-9);
        assertEquals(120, curves.getXValue(0, valve.length - 1), 1e-9);
        assertEquals(valve[10] / 1000, curves.getYValue(0, 10), 1e-9);
        assertTrue(plot.getRangeAxis() instanceof LogAxis, "the drop spans more than one decade");
        assertEquals(
                4 * 2, plot.getRangeMarkers(org.jfree.chart.ui.Layer.BACKGROUND).size(), "line and band a valve");
    }

    @Test
    void secondAxesFollowTheFirst() {
        XYPlot plot =
                TemperatureCharts.pressure(sheets.get(0), UnitSystem.METRIC).getXYPlot();
        assertEquals(-40, plot.getDomainAxis(1).getLowerBound(), 1e-9);
        assertEquals(248, plot.getDomainAxis(1).getUpperBound(), 1e-9);
        plot.getDomainAxis(0).setRange(-20, 0);
        plot.getRangeAxis(0).setRange(100, 200);
        assertEquals(-4, plot.getDomainAxis(1).getLowerBound(), 1e-9);
        assertEquals(32, plot.getDomainAxis(1).getUpperBound(), 1e-9);
        assertEquals(14.5038, plot.getRangeAxis(1).getLowerBound(), 5e-5);
    }

    @Test
    void shareChartShowsPercentAndKeepsGapsOpen() {
        StateSheet sheet = RunCharts.sheets(FixtureCase.comparison(true)).get(1);
        XYDataset curves =
                TemperatureCharts.share(sheet, UnitSystem.METRIC).getXYPlot().getDataset();
        assertTrue(Double.isNaN(curves.getYValue(1, 0)));
        assertEquals(100 * sheet.candidates().get(1).bypassShare()[30], curves.getYValue(1, 30), 1e-9);
    }

    @Test
    void candidateKeepsItsLookInEveryChartAndDiffersFromItsNeighborsWithoutColor() {
        Set<List<Object>> looks = new HashSet<>();
        for (int c = 0; c < 40; c++) {
            looks.add(List.of(ChartTheme.color(c), ChartTheme.line(c), ChartTheme.marker(c)));
            assertNotEquals(ChartTheme.line(c), ChartTheme.line(c + 1));
            assertNotEquals(ChartTheme.marker(c), ChartTheme.marker(c + 1));
        }
        assertEquals(40, looks.size());
    }

    @Test
    void shadesOfTheMapGetDarkerStepByStep() {
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= ChartTheme.SHARE_STEPS.size(); step++) {
            var shade = ChartTheme.shade(step);
            // Rec. ITU-R BT.709-6 luma weights, which is how a gray print comes out
            double luma = 0.2126 * shade.getRed() + 0.7152 * shade.getGreen() + 0.0722 * shade.getBlue();
            assertTrue(luma < before - 10, "shade " + step + " must be darker than the one before");
            before = luma;
        }
    }

    @Test
    void levelLineOfAPlaneIsStraight() {
        double[] x = {0, 1, 2, 3};
        double[] y = {0, 1, 2};
        double[][] plane = new double[4][3];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 3; j++) {
                plane[i][j] = x[i] + 0.5 * y[j];
            }
        }
        List<List<double[]>> lines = LevelLines.of(x, y, plane, 1.75);
        assertEquals(1, lines.size());
        for (double[] point : lines.get(0)) {
            assertEquals(1.75, point[0] + 0.5 * point[1], 1e-12);
        }
    }

    @Test
    void levelLineRoundAHillIsClosedAndStaysOffUnknownCells() {
        double[] grid = {0, 1, 2, 3, 4};
        double[][] hill = new double[5][5];
        hill[2][2] = 1;
        List<double[]> ring = LevelLines.of(grid, grid, hill, 0.5).get(0);
        assertArrayEquals(ring.get(0), ring.get(ring.size() - 1));
        hill[2][2] = Double.NaN;
        assertTrue(LevelLines.of(grid, grid, hill, 0.5).isEmpty());
    }

    @Test
    void mapKnowsOnlyWhatItsGridKnows() {
        ShareGrid grid = RunCharts.grid(FixtureCase.map("Blue can", false), "t", true);
        assertEquals(grid.share()[5][4], grid.at(grid.temperature()[5], grid.drive()[4]), 1e-12);
        assertTrue(Double.isNaN(grid.at(grid.temperature()[0] - 1, grid.drive()[0])));
        assertTrue(Double.isNaN(grid.at(grid.temperature()[1], grid.drive()[22])));
    }

    @Test
    void sameChartGivesTheSameSvgWithTitleAndDescription() throws IOException {
        for (StateSheet sheet : sheets) {
            String first = ChartFiles.svg(TemperatureCharts.pressure(sheet, UnitSystem.METRIC), "what it shows & why");
            assertEquals(
                    first, ChartFiles.svg(TemperatureCharts.pressure(sheet, UnitSystem.METRIC), "what it shows & why"));
            assertTrue(first.contains("What the bypass valve sees</title"), "title");
            assertTrue(first.contains("what it shows &amp; why</desc"), "description");
            assertTrue(first.contains("°C") || first.contains("&#xb0;C") || first.contains("&#176;C"), "unit");
            assertTrue(first.length() < 300_000, "curves are paths, not one line a segment");
        }
    }

    @Test
    void filesAppearWholeAndLeaveNothingElse() throws IOException {
        JFreeChart chart = TemperatureCharts.share(sheets.get(1), UnitSystem.METRIC);
        ChartFiles.writeSvg(chart, folder.resolve("a.svg"), "d");
        ChartFiles.writeSvg(chart, folder.resolve("a.svg"), "d");
        ChartFiles.writePng(chart, folder.resolve("a.png"));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
        BufferedImage image = ImageIO.read(folder.resolve("a.png").toFile());
        assertEquals(Canvas.PNG.width(), image.getWidth());
        assertEquals(Canvas.PNG.height(), image.getHeight());
        ChartFiles.writeSvg(chart, folder.resolve("made/on the way/a.svg"), "d");
        assertTrue(Files.size(folder.resolve("made/on the way/a.svg")) > 0);
        // a file is in the way of the folder
        assertThrows(IOException.class, () -> ChartFiles.writeSvg(chart, folder.resolve("a.svg/a.svg"), "d"));
    }

    @Test
    void allChartsCanBeDrawn() throws IOException {
        Path target = KEEP.isEmpty() ? folder : Files.createDirectories(Path.of(KEEP));
        for (int s = 0; s < sheets.size(); s++) {
            ChartFiles.writePng(
                    TemperatureCharts.pressure(sheets.get(s), UnitSystem.METRIC),
                    target.resolve("pressure-" + s + ".png"));
            ChartFiles.writePng(
                    TemperatureCharts.share(sheets.get(s), UnitSystem.METRIC), target.resolve("share-" + s + ".png"));
            ChartFiles.writeSvg(
                    TemperatureCharts.pressure(sheets.get(s), UnitSystem.METRIC),
                    target.resolve("pressure-" + s + ".svg"),
                    "d");
        }
        ShareGrid grid = RunCharts.grid(FixtureCase.map("Blue can", false), "Fixture", true);
        ChartFiles.writePng(ShareMapChart.of(grid, UnitSystem.METRIC), target.resolve("map.png"));
        ChartFiles.writeSvg(ShareMapChart.of(grid, UnitSystem.METRIC), target.resolve("map.svg"), "d");
        assertTrue(Files.size(target.resolve("map.svg")) < 600_000);
        assertFalse(Files.size(target.resolve("map.png")) == 0);
    }
}
