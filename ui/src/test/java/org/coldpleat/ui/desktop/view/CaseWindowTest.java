package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.desktop.view.chart.NumberRow;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The real window, driven without a display. */
class CaseWindowTest extends HutWindow {
    private static final String PLEATS = "#field:candidates[0].pleats.count";

    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    private <T extends Node> T node(String id, Class<T> type) {
        return probe.node(id, type);
    }

    private static String printed(String... words) {
        StringWriter out = new StringWriter();
        CommandLineFace.run(
                List.of(words), CaseService.standard(), new PrintWriter(out), new PrintWriter(new StringWriter()));
        return out.toString();
    }

    /** What changes nothing in the case is looked at in one window, which takes seconds to open. */
    @TestFactory
    List<DynamicTest> inAWindowThatIsOnlyLookedAt() {
        return List.of(
                DynamicTest.dynamicTest("showsWhatCompareSays", () -> showsWhatCompareSays()),
                DynamicTest.dynamicTest(
                        "everyChartNamesTheCandidatesItShows", () -> everyChartNamesTheCandidatesItShows()),
                DynamicTest.dynamicTest("everyControlHasAName", () -> everyControlHasAName()),
                DynamicTest.dynamicTest("arrowKeysReadTheCurves", () -> arrowKeysReadTheCurves(robot)),
                DynamicTest.dynamicTest(
                        "everyChartHasItsNumbersBehindIt", () -> everyChartHasItsNumbersBehindIt(robot)),
                DynamicTest.dynamicTest("sliderMovesTheDrawing", () -> sliderMovesTheDrawing(robot)),
                DynamicTest.dynamicTest("mapComesWhenLookedAt", () -> mapComesWhenLookedAt(robot)));
    }

    private void showsWhatCompareSays() {
        String expected = printed("compare", HUT.toString());
        assertEquals(expected, node("#page", TextArea.class).getText());
        String flat = expected.replaceAll("\\s+", " ");
        for (String line : window.verdictWords().split("\n", -1)) {
            if (line.startsWith("Slate: ") || line.startsWith("Copper: ")) {
                String answer = line.substring(line.indexOf(": ") + 2);
                // the table of the command line wraps a long answer over two rows
                String head = answer.substring(0, Math.min(18, answer.length()));
                assertTrue(flat.contains(head), answer);
            }
        }
        assertTrue(window.verdictWords().contains("Slate: "));
    }

    private void everyChartNamesTheCandidatesItShows() {
        for (String chart : List.of("#chart-pressure", "#chart-share")) {
            assertTrue(node(chart, PicturePane.class).getAccessibleText().contains("Slate, Copper, Fjord, Moss"));
        }
        assertTrue(node("#cutaway", PicturePane.class).getAccessibleText().contains("Slate, cut open"));
    }

    private void everyChartHasItsNumbersBehindIt(FxRobot robot) {
        for (String chart : List.of("#chart-pressure", "#chart-share")) {
            robot.interact(() -> node(chart + "-table", ToggleButton.class).fire());
            TableView<?> table = node(chart + "-numbers", TableView.class);
            List<String> series = table.getItems().stream()
                    .map(row -> ((NumberRow) row).series())
                    .distinct()
                    .toList();
            assertEquals(List.of("Slate", "Copper", "Fjord", "Moss"), series);
        }
    }

    private void arrowKeysReadTheCurves(FxRobot robot) {
        robot.interact(() -> {
            PicturePane chart = node("#chart-pressure", PicturePane.class);
            chart.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.RIGHT, false, false, false, false));
        });
        String words = node("#chart-pressure-readout", Label.class).getText();
        assertTrue(words.contains("Slate") && words.contains("Moss"), words);
    }

    private void mapComesWhenLookedAt(FxRobot robot) throws Exception {
        TabPane tabs = node("#tabs", TabPane.class);
        robot.interact(() -> tabs.getSelectionModel().select(3));
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> node("#chart-map", PicturePane.class).getAccessibleText() != null);
    }

    private void sliderMovesTheDrawing(FxRobot robot) throws Exception {
        robot.interact(() -> node("#temperature", Slider.class).setValue(-20));
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> node("#cutaway", PicturePane.class).getAccessibleText().contains("−20 °C"));
    }

    @Test
    void typedValueMovesTheAnswerAndUndoBringsItBack(FxRobot robot) throws Exception {
        String before = node("#page", TextArea.class).getText();
        probe.type("#field:candidates[0].bypass.openingPressure", "5 to 6 psi");
        probe.ready();
        String after = node("#page", TextArea.class).getText();
        assertFalse(before.equals(after));
        assertTrue(stage.getTitle().startsWith("*"));
        robot.interact(() -> node("#undo", Button.class).fire());
        probe.ready();
        assertEquals(before, node("#page", TextArea.class).getText());
        assertFalse(stage.getTitle().startsWith("*"));
    }

    @Test
    @Tag("nightly")
    void enterGoesOnToTheNextField(FxRobot robot) throws Exception {
        robot.interact(() -> node(PLEATS, TextField.class).requestFocus());
        probe.type(PLEATS, "54");
        probe.ready();
        assertEquals(
                "field:candidates[0].pleats.depth",
                stage.getScene().getFocusOwner().getId());
    }

    @Test
    @Tag("nightly")
    void badInputKeepsItsTextAndSaysWhy(FxRobot robot) {
        String before = node("#page", TextArea.class).getText();
        probe.type(PLEATS, "plenty");
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("plenty", node(PLEATS, TextField.class).getText());
        assertTrue(node("#problem:candidates[0].pleats.count", Label.class)
                .getText()
                .contains("plenty"));
        assertEquals(before, node("#page", TextArea.class).getText());
    }

    private void everyControlHasAName() {
        for (String id : List.of("#candidate", "#state", "#units", "#temperature", PLEATS)) {
            Node control = node(id, Node.class);
            assertFalse(
                    String.valueOf(control.queryAccessibleAttribute(AccessibleAttribute.TEXT))
                            .isBlank(),
                    id);
            assertTrue(control.isFocusTraversable(), id);
        }
        assertEquals(4, node("#candidate", ChoiceBox.class).getItems().size());
    }
}
