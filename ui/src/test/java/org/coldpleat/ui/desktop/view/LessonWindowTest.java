package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.lesson.Lesson;
import org.coldpleat.ui.lesson.LessonCase;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The lesson in its window gives the same words as on the command line, and only after a prediction was possible. */
@ExtendWith(ApplicationExtension.class)
class LessonWindowTest {
    private static final Path TEACHING = Path.of("../demo-cases/half-the-area/case.yaml");

    private Stage stage;
    private CaseWindow window;

    @Start
    void start(Stage given) throws IOException {
        stage = given;
        window = WindowProbe.window(given);
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(window::close);
    }

    @Test
    void aStepIsAskedPredictedAndAnswered(FxRobot robot) throws Exception {
        robot.interact(() -> window.open(TEACHING));
        MenuBar menu = (MenuBar) stage.getScene().lookup(".menu-bar");
        robot.interact(() -> menu.getMenus().stream()
                .flatMap(one -> one.getItems().stream())
                .filter(item -> "menu-lesson".equals(item.getId()))
                .findFirst()
                .orElseThrow()
                .fire());
        Stage lesson = (Stage) Window.getWindows().stream()
                .filter(one -> one != stage && one.isShowing())
                .findFirst()
                .orElseThrow();
        Label question = (Label) lesson.getScene().lookup("#lesson-question");
        Label answer = (Label) lesson.getScene().lookup("#lesson-answer");
        WindowProbe.until(20, () -> !question.getText().isEmpty());
        assertEquals("", answer.getText());
        assertFalse(lesson.getScene().lookup("#lesson-picture").isVisible());

        robot.interact(() -> ((TextField) lesson.getScene().lookup("#lesson-guess")).setText("2"));
        robot.interact(() -> ((Button) lesson.getScene().lookup("#lesson-show")).fire());
        Lesson.Told told = told();
        assertEquals(told.question(), question.getText());
        assertTrue(answer.getText().contains(told.answer()), answer.getText());
        assertTrue(answer.getText().startsWith("You said"), answer.getText());
        assertTrue(lesson.getScene().lookup("#lesson-picture").isVisible());
        new WindowProbe(lesson, robot).picture("lesson");

        Slider turn = (Slider) lesson.getScene().lookup("#lesson-turn");
        assertTrue(turn.isVisible());
        String before = answer.getText();
        robot.interact(() -> turn.setValue(0.8));
        WindowProbe.until(20, () -> !answer.getText().equals(before));
        assertTrue(answer.getText().startsWith("You said"), "the prediction stays: " + answer.getText());
        assertTrue(turn.getAccessibleText().contains("0.8"), turn.getAccessibleText());
        new WindowProbe(lesson, robot).picture("lesson-turned");

        robot.interact(() -> ((Button) lesson.getScene().lookup("#lesson-next")).fire());
        assertFalse(turn.isVisible());
        assertEquals("", answer.getText());
    }

    private static Lesson.Told told() throws IOException {
        CaseService service = CaseService.standard();
        CaseDraft draft =
                CaseDraft.open(TEACHING.toString(), Files.readString(TEACHING)).draft();
        OpenedCase opened = service.openDraft(TEACHING.toString(), draft, Optional.empty())
                .opened()
                .orElseThrow();
        LessonCase one = LessonCase.of(service, draft, opened);
        return Lesson.told(
                Lesson.STEPS.get(0), Lesson.ask(Lesson.STEPS.get(0), one).orElseThrow(), UnitSystem.METRIC);
    }
}
