package org.coldpleat.ui.desktop.view.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.HutWindow;
import org.coldpleat.ui.desktop.view.WindowProbe;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What can be done with a chart of the window: leave curves out, read it, take its numbers, choose its units. */
class ChartToolsTest extends HutWindow {
    @BeforeEach
    void lookAtTheNumbers() {
        press("#chart-pressure-table");
    }

    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    private void press(String id) {
        robot.interact(() -> probe.node(id, ToggleButton.class).fire());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void keys(KeyCode... codes) {
        for (KeyCode code : codes) {
            robot.interact(
                    () -> probe.node("#chart-pressure", PicturePane.class).fireEvent(WindowProbe.key(code)));
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** What changes nothing in the case is done in one window, which takes seconds to open; curves are left out last. */
    @TestFactory
    List<DynamicTest> withACaseThatStaysAsItIs(@TempDir Path folder) {
        return List.of(
                DynamicTest.dynamicTest(
                        "aSavedPictureHasTheEndingOfItsKindAndSaysWhatItCannotTell",
                        () -> aSavedPictureHasTheEndingOfItsKindAndSaysWhatItCannotTell(folder)),
                DynamicTest.dynamicTest("numbersGoToTheClipboardAsCells", () -> numbersGoToTheClipboardAsCells()),
                DynamicTest.dynamicTest(
                        "tableAndReadOutAreInTheChosenUnits", () -> tableAndReadOutAreInTheChosenUnits()),
                DynamicTest.dynamicTest("noCurveAtAllIsNoTrouble", () -> noCurveAtAllIsNoTrouble()));
    }

    private void aSavedPictureHasTheEndingOfItsKindAndSaysWhatItCannotTell(Path folder) throws IOException {
        ChartPane pane = (ChartPane)
                probe.node("#chart-pressure-numbers", TableView.class).getParent();
        robot.interact(() -> {
            pane.save(folder.resolve("lines"), ".svg");
            pane.save(folder.resolve("points.png"), ".svg");
        });
        assertTrue(Files.readString(folder.resolve("lines.svg")).contains("<svg"));
        assertTrue(Files.size(folder.resolve("points.png")) > 0);
        assertTrue(Files.exists(folder.resolve("what-pictures-cannot-tell.txt")));
        assertTrue(readOut().contains("points.png"), readOut());
    }

    private TableView<?> table() {
        return probe.node("#chart-pressure-numbers", TableView.class);
    }

    private List<String> series() {
        return table().getItems().stream()
                .map(row -> ((NumberRow) row).series())
                .distinct()
                .toList();
    }

    private String readOut() {
        return probe.node("#chart-pressure-readout", Label.class).getText();
    }

    private void units(UnitSystem units) {
        robot.interact(() -> {
            @SuppressWarnings("unchecked")
            ChoiceBox<UnitSystem> box = probe.node("#units", ChoiceBox.class);
            box.setValue(units);
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void curveIsLeftOutOfBothChartsAndStaysOutThroughAnEdit() throws Exception {
        String page = probe.node("#page", javafx.scene.control.TextArea.class).getText();
        press("#legend-pressure:Copper");
        assertEquals(List.of("Slate", "Fjord", "Moss"), series());
        assertFalse(probe.node("#legend-share:Copper", ToggleButton.class).isSelected());
        assertEquals(
                page, probe.node("#page", javafx.scene.control.TextArea.class).getText());
        probe.type("#field:candidates[0].pleats.count", "41");
        probe.ready();
        assertEquals(List.of("Slate", "Fjord", "Moss"), series());
        press("#legend-pressure:Copper");
        assertEquals(List.of("Slate", "Copper", "Fjord", "Moss"), series());
    }

    private void noCurveAtAllIsNoTrouble() {
        for (String name : series()) {
            press("#legend-pressure:" + name);
        }
        assertEquals(List.of(), series());
        press("#legend-pressure:Moss");
        assertEquals(List.of("Moss"), series());
    }

    private void tableAndReadOutAreInTheChosenUnits() {
        press("#chart-pressure-table");
        keys(KeyCode.RIGHT);
        String metric = readOut();
        assertTrue(metric.contains("°C") && metric.contains("kPa"), metric);
        units(UnitSystem.US);
        keys(KeyCode.LEFT, KeyCode.RIGHT);
        String trade = readOut();
        assertTrue(trade.contains("°F") && trade.contains("psi") && !trade.contains("kPa"), trade);
        double celsius = Double.parseDouble(metric.replaceFirst("At (\\S+) .*", "$1"));
        double fahrenheit = Double.parseDouble(trade.replaceFirst("At (\\S+) .*", "$1"));
        // four digits are shown
        assertEquals(1.8 * celsius + 32, fahrenheit, 1e-3 * Math.abs(fahrenheit) + 0.01);
        press("#chart-pressure-table");
        assertTrue(table().getColumns().get(1).getText().endsWith("°F"));
        assertTrue(table().getColumns().get(2).getText().endsWith("psi"));
        units(UnitSystem.SI);
        assertTrue(table().getColumns().get(2).getText().endsWith("Pa"));
        assertFalse(table().getColumns().get(2).getText().endsWith("kPa"));
    }

    @Test
    @Tag("nightly")
    void readingFollowsTheCurvesThatWereDrawnAnew() throws Exception {
        press("#chart-pressure-table");
        keys(KeyCode.RIGHT);
        String before = readOut();
        probe.type("#field:candidates[0].pleats.count", "41");
        probe.ready();
        assertNotEquals(before, readOut());
        assertEquals(before.replaceFirst(":.*", ""), readOut().replaceFirst(":.*", ""));
        probe.picture("reading");
    }

    private void numbersGoToTheClipboardAsCells() {
        String[] text = new String[1];
        robot.interact(() -> {
            probe.node("#chart-pressure-copyNumbers", Button.class).fire();
            text[0] = Clipboard.getSystemClipboard().getString();
        });
        String[] lines = text[0].split("\n", -1);
        assertEquals(table().getItems().size() + 2, lines.length);
        assertEquals(3, lines[1].split("\t", -1).length);
        assertTrue(lines[0].contains("°C") && lines[0].contains("kPa"), lines[0]);
    }
}
