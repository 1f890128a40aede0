package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Widths measured on a photograph with the keyboard alone, from the attached file to the sheet. */
@ExtendWith(ApplicationExtension.class)
class PhotographWindowTest {
    private static final Path HALF = Path.of("../demo-cases/half-the-area/case.yaml");
    private static final String TEST = "candidates[0].tests.fiberSizing.";

    private Path folder;
    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;

    @Start
    void start(Stage given) throws IOException {
        folder = Files.createTempDirectory("coldpleat");
        stage = given;
        window = new CaseWindow(given, CaseService.standard(), folder.resolve("state"), FileQuestions.DIALOGS);
        given.show();
    }

    @BeforeEach
    void openWithAPicture(FxRobot robot) throws Exception {
        Path file = folder.resolve("case.yaml");
        Files.copy(HALF, file);
        Path picture = fibers();
        robot.interact(() -> window.open(file));
        robot.interact(() -> window.take(picture));
        Stage photographs = (Stage) Window.getWindows().stream()
                .filter(one -> one != stage && one.isShowing())
                .findFirst()
                .orElseThrow();
        probe = new WindowProbe(photographs, robot);
        WindowProbe.until(20, () -> said().contains("no scale") || said().contains("scale"));
        WindowProbe.until(20, () -> !said().startsWith("Reading"));
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(window::close);
    }

    /** An invented micrograph: some strokes, and a bar of 200 pixels. */
    private Path fibers() throws IOException {
        BufferedImage image = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.setColor(new Color(0xB9A98C));
        g2.fillRect(0, 0, 800, 600);
        g2.setColor(new Color(0x5B4A33));
        g2.setStroke(new BasicStroke(14));
        for (int i = 0; i < 12; i++) {
            g2.drawLine(70 * i, 0, 800 - 50 * i, 600);
        }
        g2.setColor(Color.WHITE);
        g2.fillRect(560, 560, 200, 8);
        g2.dispose();
        Path file = folder.resolve("fibers.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    private CaseBench bench() {
        return window.bench().orElseThrow();
    }

    private String said() {
        return probe.node("#photograph-said", Label.class).getText();
    }

    private void keys(FxRobot robot, KeyCode code, int times, boolean shift) {
        robot.interact(() -> {
            Node sheet = probe.node("#marked-sheet", Node.class);
            for (int i = 0; i < times; i++) {
                Event.fireEvent(sheet, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
            }
        });
    }

    private void press(FxRobot robot, String id) {
        robot.interact(() -> probe.node(id, Button.class).fire());
    }

    private void set(FxRobot robot, String id, String text) {
        robot.interact(() -> probe.node(id, TextField.class).setText(text));
    }

    @Test
    void keysMeasureFibersIntoTheSheet(FxRobot robot) throws Exception {
        assertEquals(
                "fibers.png",
                bench().draft().value("candidates[0].photographs[0].file").orElseThrow());
        // at the scale of the picture itself an arrow key moves by one pixel
        keys(robot, KeyCode.SPACE, 1, false);
        keys(robot, KeyCode.RIGHT, 20, true);
        keys(robot, KeyCode.SPACE, 1, false);
        assertTrue(probe.node("#photograph-widths", RadioButton.class).isSelected());
        set(robot, "#photograph-barLength", "200x");
        assertTrue(said().contains("A magnification such as 200x gives no scale"), said());
        assertTrue(probe.node("#photograph-write", Button.class).isDisabled());
        set(robot, "#photograph-barLength", "0.2 mm");
        for (int i = 0; i < 3; i++) {
            keys(robot, KeyCode.SPACE, 1, false);
            keys(robot, KeyCode.DOWN, 12 + i, false);
            keys(robot, KeyCode.SPACE, 1, false);
        }
        assertTrue(said().contains("Widths marked: 3"), said());
        keys(robot, KeyCode.BACK_SPACE, 1, false);
        assertTrue(said().contains("Widths marked: 2"), said());
        keys(robot, KeyCode.SPACE, 1, false);
        probe.picture("photograph");
        press(robot, "#photograph-write");
        assertEquals(3, bench().draft().count(TEST + "fibers"));
        assertEquals("0.2 mm", bench().draft().value(TEST + "scaleBar").orElseThrow());
        assertTrue(bench().isUnderstood(), bench().problems().toString());
        double ratio = Double.parseDouble(
                        bench().draft().value(TEST + "fibers[2].width").orElseThrow())
                / Double.parseDouble(
                        bench().draft().value(TEST + "fibers[0].width").orElseThrow());
        assertEquals(14.0 / 12, ratio, 0.01, "one decimal of a pixel is kept");
    }

    /** One after the other in one window, which takes seconds to open. */
    @TestFactory
    List<DynamicTest> aPictureIsLookedAtAndTakenOut(FxRobot robot) {
        return List.of(
                DynamicTest.dynamicTest(
                        "zoomChangesNothingThatIsMeasured", () -> zoomChangesNothingThatIsMeasured(robot)),
                DynamicTest.dynamicTest("aPictureIsTakenOutAgain", () -> aPictureIsTakenOutAgain(robot)),
                DynamicTest.dynamicTest("aPictureThatIsGoneSaysSo", () -> aPictureThatIsGoneSaysSo(robot)));
    }

    private void zoomChangesNothingThatIsMeasured(FxRobot robot) {
        keys(robot, KeyCode.SPACE, 1, false);
        keys(robot, KeyCode.HOME, 1, false);
        keys(robot, KeyCode.PLUS, 5, false);
        keys(robot, KeyCode.MINUS, 2, false);
        set(robot, "#photograph-fieldWidth", "1.6 mm");
        assertTrue(said().contains("One pixel is 2.00 µm"), said());
    }

    private void aPictureIsTakenOutAgain(FxRobot robot) {
        press(robot, "#photograph-detach");
        assertEquals(0, bench().draft().count("candidates[0].photographs"));
        assertEquals(WindowTexts.get("photograph.none"), said());
        assertTrue(Files.exists(folder.resolve("fibers.png")));
    }

    private void aPictureThatIsGoneSaysSo(FxRobot robot) throws Exception {
        robot.interact(() -> window.take(folder.resolve("gone.jpg")));
        WindowProbe.until(10, () -> said().contains("gone.jpg"));
        assertTrue(said().contains("is not there"), said());
        assertFalse(probe.node("#photograph-write", Button.class).getText().isBlank());
    }
}
