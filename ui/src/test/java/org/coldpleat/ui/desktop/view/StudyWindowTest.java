package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;

/** What takes long is worked out beside the window, can be stopped, and says when it is out of date. */
class StudyWindowTest extends HutWindow {
    private static final String PLEATS = "#field:candidates[0].pleats.count";

    /** Two filters, since every study is worked out anew for each test. */
    @Override
    protected Path file() {
        return Path.of("../demo-cases/half-the-area/case.yaml");
    }

    @Start
    void start(Stage given) throws IOException {
        begin(given);
    }

    private void look(FxRobot robot, String tab) {
        robot.interact(() -> {
            TabPane tabs = probe.node("#tabs", TabPane.class);
            tabs.getTabs().stream()
                    .filter(one -> one.getId().equals("tab-" + tab))
                    .forEach(one -> tabs.getSelectionModel().select(one));
        });
    }

    private void press(FxRobot robot, String id) {
        robot.interact(() -> probe.node(id, Button.class).fire());
    }

    private String picture(String key) {
        return probe.has("#chart-" + key)
                ? String.valueOf(probe.node("#chart-" + key, PicturePane.class).getAccessibleText())
                : "";
    }

    private void answered(String key) throws Exception {
        WindowProbe.until(
                60, () -> probe.node("#study-" + key + "-stop", Button.class).isDisabled());
        assertTrue(picture(key).contains("Full"), key + ": " + picture(key));
    }

    private String note(String key) {
        return probe.node("#study-" + key + "-note", Label.class).getText();
    }

    private String words(String key) {
        return probe.node("#study-" + key + "-words", Label.class).getText();
    }

    @Test
    void pleatsAreWorkedOutWhenLookedAtAndGrowOldWithAnEdit(FxRobot robot) throws Exception {
        look(robot, "pleats");
        answered("pleats");
        assertEquals(
                "never open at -25.0 °C in stand at pump flow",
                probe.node("#study-pleats:target", TextField.class).getText());
        assertTrue(words("pleats").contains("Full"), words("pleats"));
        assertEquals("", note("pleats"));
        probe.picture("study-pleats");
        String before = words("pleats");
        probe.type(PLEATS, "41");
        assertEquals(WindowTexts.get("study.outdated"), note("pleats"));
        assertEquals(before, words("pleats"));
        probe.ready();
        assertEquals(WindowTexts.get("study.outdated"), note("pleats"));
        probe.picture("study-outdated");
        press(robot, "#study-pleats-run");
        answered("pleats");
        assertEquals("", note("pleats"));
        assertNotEquals(before, words("pleats"));
    }

    @Test
    void stepsBackMakeAnAnswerGoodAgain(FxRobot robot) throws Exception {
        look(robot, "loading");
        answered("loading");
        assertTrue(probe.node("#study-loading-pictures", ChoiceBox.class)
                        .getItems()
                        .size()
                >= 6);
        look(robot, "settings");
        answered("settings");
        probe.picture("study-settings");
        probe.type(PLEATS, "41");
        assertEquals(WindowTexts.get("study.outdated"), note("settings"));
        press(robot, "#undo");
        assertEquals("", note("settings"));
    }

    @Test
    @Tag("nightly")
    void anotherFilterHasAnotherPleatCurve(FxRobot robot) throws Exception {
        look(robot, "pleats");
        answered("pleats");
        robot.interact(() ->
                probe.node("#candidate", ChoiceBox.class).getSelectionModel().select(1));
        assertEquals(WindowTexts.get("study.outdated"), note("pleats"));
    }

    @Test
    void confidenceShowsItsAdvanceAndCanBeStopped(FxRobot robot) throws Exception {
        robot.interact(
                () -> probe.node("#study-confidence:draws", TextField.class).setText("64"));
        look(robot, "confidence");
        answered("confidence");
        probe.picture("study-confidence");
        ChoiceBox<?> pictures = probe.node("#study-confidence-pictures", ChoiceBox.class);
        assertEquals(3, pictures.getItems().size());
        for (int i = 1; i < 3; i++) {
            int chosen = i;
            robot.interact(() -> {
                pictures.getSelectionModel().select(chosen);
                probe.node("#chart-confidence", PicturePane.class).fireEvent(WindowProbe.key(KeyCode.RIGHT));
            });
            probe.picture("study-confidence-" + i);
        }
        robot.interact(() -> pictures.getSelectionModel().select(0));
        probe.type("#study-confidence:draws", "60000");
        ProgressBar progress = probe.node("#study-confidence-progress", ProgressBar.class);
        WindowProbe.until(30, () -> progress.getProgress() > 0);
        assertTrue(progress.isVisible());
        press(robot, "#study-confidence-stop");
        assertFalse(progress.isVisible());
        assertEquals(WindowTexts.get("study.stopped"), note("confidence"));
        assertTrue(probe.node("#study-confidence-stop", Button.class).isDisabled());
        assertFalse(probe.node("#study-confidence-run", Button.class).isDisabled());
        // what was there before stays, pale
        assertTrue(picture("confidence").contains("Full"));
    }

    @Test
    @Tag("nightly")
    void anEditStopsWhatIsBeingWorkedOut(FxRobot robot) throws Exception {
        look(robot, "confidence");
        probe.type("#study-confidence:draws", "60000");
        assertFalse(probe.node("#study-confidence-stop", Button.class).isDisabled());
        probe.type(PLEATS, "41");
        assertEquals(WindowTexts.get("study.overtaken"), note("confidence"));
        assertTrue(probe.node("#study-confidence-stop", Button.class).isDisabled());
    }

    @Test
    @Tag("nightly")
    void aQuestionThatIsNotUnderstoodSaysWhy(FxRobot robot) throws Exception {
        look(robot, "settings");
        answered("settings");
        probe.type("#study-settings:to", "-3 bar");
        WindowProbe.until(20, () -> probe.has("#chart-settings-empty"));
        assertTrue(probe.node("#chart-settings-empty", Label.class).getText().contains("-3 bar"));
        look(robot, "pleats");
        answered("pleats");
        probe.type("#study-pleats:target", "as cold as it gets");
        WindowProbe.until(20, () -> probe.has("#chart-pleats-empty"));
        look(robot, "confidence");
        probe.type("#study-confidence:draws", "many");
        WindowProbe.until(
                20,
                () -> probe.node("#chart-confidence-empty", Label.class)
                        .getText()
                        .contains("many"));
    }
}
