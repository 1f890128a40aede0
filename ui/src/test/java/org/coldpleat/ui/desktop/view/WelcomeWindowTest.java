package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.DialogPane;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The first start, what is remembered of it, and that every part of the window can be reached and has a name. */
@ExtendWith(ApplicationExtension.class)
class WelcomeWindowTest {
    private Path state;
    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;

    @Start
    void start(Stage given) throws IOException {
        state = Files.createTempDirectory("coldpleat");
        stage = given;
        window = new CaseWindow(given, CaseService.standard(), state, FileQuestions.DIALOGS);
        given.show();
    }

    @BeforeEach
    void welcome(FxRobot robot) {
        probe = new WindowProbe(stage, robot);
        robot.interact(window::welcome);
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(window::close);
    }

    @Test
    void theFirstStartShowsADemoAndATourThatIsSeenOnce(FxRobot robot) throws Exception {
        probe.ready();
        assertTrue(probe.node("#tour", Node.class).isVisible());
        Set<String> words = new LinkedHashSet<>();
        while (probe.node("#tour", Node.class).isVisible()) {
            assertTrue(words.add(probe.node("#tour-words", Label.class).getText()));
            robot.interact(() -> probe.node("#tour-next", Button.class).fire());
        }
        assertEquals(6, words.size());
        assertFalse(stage.getTitle().startsWith("*"), "a demo that was not touched is nothing to save");
        robot.interact(() -> {
            window.close();
            window = new CaseWindow(stage, CaseService.standard(), state, FileQuestions.DIALOGS);
            window.welcome();
        });
        assertFalse(probe.node("#tour", Node.class).isVisible());
        assertEquals(List.of(), window.bench().orElseThrow().candidates());
    }

    @Test
    @Tag("nightly")
    void theTourCanBeSkipped(FxRobot robot) {
        robot.interact(() -> probe.node("#tour-skip", Button.class).fire());
        assertFalse(probe.node("#tour", Node.class).isVisible());
        assertFalse(new WindowKeeper(stage, null, state).isNew());
    }

    @Test
    void theWindowComesBackAsItWasLeft(FxRobot robot) {
        robot.interact(() -> {
            stage.setWidth(1111);
            stage.setHeight(777);
            probe.node("#type", Slider.class).setValue(140);
            probe.node("#dark", ToggleButton.class).fire();
            @SuppressWarnings("unchecked")
            ChoiceBox<UnitSystem> units = probe.node("#units", ChoiceBox.class);
            units.setValue(UnitSystem.US);
            window.leave();
            window.close();
            stage.setWidth(900);
            stage.setHeight(600);
            window = new CaseWindow(stage, CaseService.standard(), state, FileQuestions.DIALOGS);
            window.restore();
        });
        assertEquals(1111, stage.getWidth(), 1);
        assertEquals(777, stage.getHeight(), 1);
        assertEquals(140, probe.node("#type", Slider.class).getValue(), 0.1);
        assertTrue(stage.getScene().getRoot().getStyleClass().contains("dark"));
        assertEquals(UnitSystem.US, probe.node("#units", ChoiceBox.class).getValue());
    }

    /** One after the other in one window, which takes seconds to open; the last changes the case. */
    @TestFactory
    List<DynamicTest> inTheFirstWindow(FxRobot robot) throws Exception {
        probe.ready();
        return List.of(
                DynamicTest.dynamicTest(
                        "everyControlHasANameAndEveryCommandItsKeys",
                        () -> everyControlHasANameAndEveryCommandItsKeys(robot)),
                DynamicTest.dynamicTest("aboutNamesTheLicenses", () -> aboutNamesTheLicenses(robot)),
                DynamicTest.dynamicTest(
                        "closingWithChangesAsksAndCancelKeepsThem",
                        () -> closingWithChangesAsksAndCancelKeepsThem(robot)));
    }

    private void everyControlHasANameAndEveryCommandItsKeys(FxRobot robot) {
        // what stands beside a value is there once it was asked for
        robot.interact(() -> walk(stage.getScene().getRoot(), node -> {
            if (node instanceof ToggleButton more
                    && String.valueOf(more.getId()).startsWith("more:")) {
                more.fire();
            }
        }));
        List<String> nameless = new ArrayList<>();
        int[] seen = new int[1];
        walk(stage.getScene().getRoot(), node -> {
            if (node instanceof Control control && control.isFocusTraversable()) {
                seen[0]++;
                Object name = control.queryAccessibleAttribute(AccessibleAttribute.TEXT);
                boolean own = control.getAccessibleText() != null
                        && !control.getAccessibleText().isBlank();
                boolean typed = control instanceof TextField || control instanceof TextArea;
                if (!own && (typed || name == null || name.toString().isBlank())) {
                    nameless.add(control.getClass().getSimpleName() + " " + control.getId());
                }
            }
        });
        assertTrue(seen[0] > 100, "controls: " + seen[0]);
        assertEquals(List.of(), nameless);
        Set<Object> keys = new LinkedHashSet<>();
        MenuBar menus = (MenuBar) ((Parent) ((BorderPane) stage.getScene().getRoot()).getTop())
                .getChildrenUnmodifiable()
                .get(0);
        for (Menu menu : menus.getMenus()) {
            for (MenuItem item : menu.getItems()) {
                if (!(item instanceof Menu)) {
                    assertTrue(item.getAccelerator() != null, item.getText());
                    assertTrue(keys.add(item.getAccelerator()), item.getText() + " shares its keys");
                }
            }
        }
        assertTrue(keys.size() > 15, keys.toString());
    }

    private static void walk(Node at, Consumer<Node> told) {
        told.accept(at);
        List<? extends Node> below = WindowProbe.inside(at)
                .orElseGet(() -> at instanceof Parent parent && !(at instanceof Control)
                        ? parent.getChildrenUnmodifiable()
                        : List.of());
        below.forEach(node -> walk(node, told));
    }

    private void aboutNamesTheLicenses(FxRobot robot) {
        String[] words = new String[1];
        robot.interact(() -> {
            Alert about = HelpMenu.about(stage);
            words[0] = ((TextArea) about.getDialogPane().getContent()).getText();
        });
        for (String part : List.of(
                "Apache-2.0: ",
                "GPL-2.0 with Classpath Exception: javafx-base",
                "MIT: jsoup",
                "jfreechart",
                "DejaVu")) {
            assertTrue(words[0].contains(part), part);
        }
    }

    private void closingWithChangesAsksAndCancelKeepsThem(FxRobot robot) throws Exception {
        // the field still has the keyboard: nothing was entered yet
        robot.interact(() -> {
            TextField name = probe.node("#field:candidates[0].name", TextField.class);
            name.requestFocus();
            name.setText("Schist");
        });
        Platform.runLater(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        WindowProbe.until(10, () -> Window.getWindows().stream().anyMatch(one -> one != stage && one.isShowing()));
        robot.interact(() -> {
            DialogPane question = (DialogPane) Window.getWindows().stream()
                    .filter(one -> one != stage && one.isShowing())
                    .findFirst()
                    .orElseThrow()
                    .getScene()
                    .getRoot();
            ((Button) question.lookupButton(ButtonType.CANCEL)).fire();
        });
        assertTrue(stage.isShowing());
        assertTrue(stage.getTitle().startsWith("*"));
        assertEquals("Schist", window.bench().orElseThrow().candidates().get(0));
    }
}
