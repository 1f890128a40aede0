package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.desktop.view.bench.TypedInput;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.Recovery;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Writing a case in the window, from nothing to a verdict. One window for all, which takes seconds to be laid out. */
@ExtendWith(ApplicationExtension.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchWindowTest {
    /** An invented teardown, in the order of the sheet. */
    private static final String[][] FILTER = {
        {"name", "Birch"},
        {"outside.diameter", "76 mm"},
        {"outside.length", "3.4in"},
        {"outside.mass", "280 g"},
        {"bypass.position", "dome"},
        {"bypass.openingPressure", "14 to 18 psi"},
        {"bypass.seatDiameter", "15,2 mm"},
        {"bypass.springRate", "1.7 N/mm"},
        {"bypass.maximumLift", "3.1 mm"},
        {"basePlate.inletHoles.count", "8"},
        {"basePlate.inletHoles.diameter", "6.1 mm"},
        {"centerTube.insideDiameter", "31 mm"},
        {"centerTube.holes.count", "64"},
        {"centerTube.holes.diameter", "4.1 mm"},
        {"element.outsideDiameter", "67 mm"},
        {"element.insideDiameter", "34 mm"},
        {"element.length", "61 mm"},
        {"pleats.count", "53"},
        {"pleats.height", "61 mm"},
        {"medium.family", "cellulose"},
        {"medium.strip.length", "1720 mm"},
        {"medium.strip.width", "61 mm"},
        {"medium.thickness", "[0.68, 0.71, 0.70] mm"},
        {"medium.airTest.pressure", "200 Pa"},
        {"medium.airTest.velocity", "310 L/m2/s"},
    };

    private final Path state = folder();
    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;

    private static Path folder() {
        try {
            return Files.createTempDirectory("coldpleat");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Start
    void start(Stage given) {
        if (window == null) {
            stage = given;
            window = new CaseWindow(given, CaseService.standard(), state, FileQuestions.DIALOGS);
        }
        given.show();
    }

    @BeforeEach
    void probe(FxRobot robot) {
        probe = new WindowProbe(stage, robot);
        robot.interact(
                () -> probe.node("#units", ChoiceBox.class).getSelectionModel().select(0));
    }

    /** A case as it stands in its file is left without a question. */
    @AfterEach
    void leave(FxRobot robot) throws IOException {
        Path file =
                Files.writeString(state.resolve("left.yaml"), CaseDraft.blank().text());
        robot.interact(() -> TypedInput.commit(stage.getScene()));
        robot.interact(() -> window.open(file));
    }

    @AfterAll
    void close() {
        new FxRobot().interact(window::close);
    }

    private CaseBench bench() {
        return window.bench().orElseThrow();
    }

    private void sheet(FxRobot robot, String key) {
        robot.interact(() -> {
            @SuppressWarnings("unchecked")
            ChoiceBox<String> sheets = probe.node("#sheets", ChoiceBox.class);
            sheets.setValue(key);
        });
    }

    /** After the enter key the keyboard is in the next field; undo is meant for what was typed before all the same. */
    @Test
    void undoKeyTakesBackWhatWasEnteredAndThenWhatIsBeingTyped(FxRobot robot) throws Exception {
        startNew(robot);
        press(robot, "#addFilter");
        String width = "#field:candidates[0].outside.diameter";
        probe.type(width, "76 mm");
        assertEquals("76 mm", probe.node(width, TextField.class).getText());
        String next = "#field:candidates[0].outside.length";
        robot.interact(() -> {
            probe.node(next, TextField.class).requestFocus();
            control(probe.node(next, TextField.class), KeyCode.Z);
        });
        WindowProbe.until(10, () -> probe.node(width, TextField.class).getText().isEmpty());
        robot.interact(() -> control(probe.node(next, TextField.class), KeyCode.Y));
        WindowProbe.until(10, () -> probe.node(width, TextField.class).getText().equals("76 mm"));
        robot.interact(() -> {
            TextField field = probe.node(next, TextField.class);
            field.requestFocus();
            field.setText("8");
            control(field, KeyCode.Z);
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("76 mm", probe.node(width, TextField.class).getText());
    }

    /** A case written from nothing says what it needs, and each line leads to where it is written. */
    @Test
    void aNewCaseSaysWhatItNeedsAndLeadsThere(FxRobot robot) throws Exception {
        startNew(robot);
        assertTrue(probe.node("#needs", Node.class).isVisible());
        assertEquals(List.of(), probe.node("#state", ChoiceBox.class).getItems());
        press(robot, "#needs:oil");
        assertEquals("oil", probe.node("#sheets", ChoiceBox.class).getValue());
        assertFalse(probe.has("#needs:title"));
        press(robot, "#needs:candidates");
        assertEquals(1, bench().candidates().size());
        probe.picture("needs");
    }

    private static void control(Node target, KeyCode code) {
        target.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false));
    }

    private void press(FxRobot robot, String id) {
        robot.interact(() -> probe.node(id, Button.class).fire());
    }

    private void startNew(FxRobot robot) {
        robot.interact(() -> stage.getScene()
                .getAccelerators()
                .getOrDefault(KeyCombination.valueOf("Shortcut+N"), () -> {})
                .run());
    }

    private void typeOil(FxRobot robot) {
        sheet(robot, "case");
        probe.type("#field:title", "Birch on the stand");
        sheet(robot, "oil");
        probe.type("#field:oil.grade", "15W-40");
        sheet(robot, "flowStand");
        press(robot, "#another:flowStand.states");
        probe.type("#field:flowStand.states[0].name", "steady");
        probe.type("#field:flowStand.states[0].flow", "9,5 L/min");
    }

    /** The same case without the walk through its fields, but for the last. */
    private void write(FxRobot robot) {
        startNew(robot);
        robot.interact(() -> {
            bench().edit("title", "Birch on the stand");
            bench().edit("oil.grade", "15W-40");
            bench().addEntry("flowStand.states");
            bench().edit("flowStand.states[0].name", "steady");
            bench().edit("flowStand.states[0].flow", "9,5 L/min");
        });
        press(robot, "#addFilter");
        List<String[]> fields = List.of(FILTER);
        robot.interact(() -> fields.forEach(field -> bench().edit("candidates[0]." + field[0], field[1])));
        probe.type("#field:candidates[0].outside.mass", "281 g");
    }

    private void typeFilter(FxRobot robot) {
        press(robot, "#addFilter");
        for (String[] field : FILTER) {
            probe.type("#field:candidates[0]." + field[0], field[1]);
        }
    }

    @Test
    void aTeardownIsTypedFromNothingToAVerdictAndTakenBack(FxRobot robot) throws Exception {
        startNew(robot);
        String nothing = bench().draft().text();
        assertEquals(CaseDraft.blank().text(), nothing);
        typeOil(robot);
        typeFilter(robot);
        assertTrue(bench().isUnderstood(), bench().problems().toString());
        WindowProbe.until(60, () -> window.verdictWords().contains("Birch: "));
        assertTrue(probe.node("#page", TextArea.class).getText().contains("Birch"));
        assertTrue(stage.getTitle().startsWith("*"));
        probe.picture("bench-typed");
        for (String[] field : FILTER) {
            assertEquals(
                    field[1], bench().draft().value("candidates[0]." + field[0]).orElseThrow());
        }
        int[] steps = new int[1];
        robot.interact(() -> {
            while (bench().canUndo()) {
                probe.node("#undo", Button.class).fire();
                steps[0]++;
            }
        });
        assertEquals(FILTER.length + 6, steps[0]);
        assertEquals(nothing, bench().draft().text());
        robot.interact(() -> {
            while (bench().canRedo()) {
                probe.node("#redo", Button.class).fire();
            }
        });
        assertTrue(bench().isUnderstood());
    }

    @Test
    void enterGoesThroughAllFieldsOfTheSheet(FxRobot robot) {
        startNew(robot);
        press(robot, "#addFilter");
        robot.interact(
                () -> probe.node("#field:candidates[0].name", TextField.class).requestFocus());
        Set<String> seen = new LinkedHashSet<>();
        robot.interact(() -> {
            for (Node owner = focused(); seen.add(owner.getId()); owner = focused()) {
                Event.fireEvent(owner, WindowProbe.key(KeyCode.ENTER));
            }
        });
        List<String> order = List.copyOf(seen);
        assertEquals("field:candidates[0].name", order.get(0));
        assertEquals("field:candidates[0].notes", order.get(order.size() - 1));
        assertTrue(order.size() > 60, order.toString());
        assertTrue(order.indexOf("field:candidates[0].gasket.material")
                < order.indexOf("field:candidates[0].bypass.position"));
    }

    @Test
    void whatIsNotUnderstoodBlocksNothingAndSaysWhyAtItsField(FxRobot robot) throws Exception {
        write(robot);
        WindowProbe.until(60, () -> window.verdictWords().contains("Birch: "));
        probe.type("#field:candidates[0].pleats.count", "about fifty");
        assertEquals(
                "about fifty",
                bench().draft().value("candidates[0].pleats.count").orElseThrow());
        assertTrue(probe.node("#problem:candidates[0].pleats.count", Label.class)
                .getText()
                .contains("about fifty"));
        assertTrue(probe.isStale());
        probe.type("#field:candidates[0].pleats.height", "60 mm");
        probe.picture("bench-not-understood");
        probe.type("#field:candidates[0].pleats.count", "53");
        assertFalse(
                probe.node("#problem:candidates[0].pleats.count", Label.class).isVisible());
        WindowProbe.until(60, () -> !probe.isStale());
    }

    @Test
    @Tag("nightly")
    void whatIsTypedInAnyUnitIsEchoedAndWhatItAmountsToStandsBesideIt(FxRobot robot) throws Exception {
        write(robot);
        // inches as fractions and decimals, a decimal comma
        for (String[] typed : new String[][] {{"2-3/8\"", "60.3"}, {"1.45in", "36.8"}, {"60,5 mm", "60.5"}}) {
            probe.type("#field:candidates[0].pleats.height", typed[0]);
            String echo = meaning("candidates[0].pleats.height");
            assertTrue(echo.contains(typed[1]) && echo.contains("mm"), typed[0] + ": " + echo);
        }
        String area = probe.node("#amount:candidates[0].pleats", Label.class).getText();
        assertTrue(area.contains("cm2") || area.contains("cm²"), area);
        probe.type("#field:candidates[0].medium.strip.length", "1.2 m");
        assertFalse(area.equals(
                probe.node("#amount:candidates[0].pleats", Label.class).getText()));
        robot.interact(
                () -> probe.node("#units", ChoiceBox.class).getSelectionModel().select(1));
        assertTrue(meaning("candidates[0].pleats.height").contains("in"), meaning("candidates[0].pleats.height"));
        probe.type("#field:candidates[0].pleats.height", "tall");
        assertEquals("", meaning("candidates[0].pleats.height"), "nothing is echoed of what is not understood");
    }

    private Node focused() {
        return stage.getScene().getFocusOwner();
    }

    private String meaning(String path) {
        return probe.node("#meaning:" + path, Label.class).getText();
    }

    @Test
    @Tag("nightly")
    void whereAValueComesFromAndANoteStandBesideIt(FxRobot robot) {
        startNew(robot);
        press(robot, "#addFilter");
        probe.type("#field:candidates[0].outside.diameter", "76 mm");
        robot.interact(() -> probe.node("#more:candidates[0].outside.diameter", ToggleButton.class)
                .fire());
        probe.type("#field:candidates[0].outside.diameter.provenance", "printed");
        probe.type("#field:candidates[0].outside.diameter.note", "on the box, not measured");
        assertTrue(bench().draft()
                .text()
                .contains("diameter: {value: 76 mm, provenance: printed, note: 'on the box, not measured'}"));
    }

    @Test
    @Tag("nightly")
    void aFileThatIsNoTextSaysSoAndLeavesTheBenchAlone(FxRobot robot) throws IOException {
        startNew(robot);
        Path file = state.resolve("picture.yaml");
        Files.write(file, new byte[] {1, (byte) 0x80, (byte) 0xff});
        robot.interact(() -> window.open(file));
        assertTrue(probe.node("#status", Label.class).getText().contains("UTF-8"));
        assertEquals(CaseDraft.blank().text(), bench().draft().text());
    }

    @Test
    @Tag("nightly")
    void anotherCaseIsNotShownWithTheResultsOfTheOneBefore(FxRobot robot) throws Exception {
        write(robot);
        WindowProbe.until(60, () -> window.verdictWords().contains("Birch: "));
        assertTrue(probe.node("#tabs", Node.class).isVisible());
        robot.interact(() -> window.saveTo(state.resolve("birch.yaml")));
        startNew(robot);
        assertFalse(probe.node("#tabs", Node.class).isVisible());
        assertFalse(probe.node("#verdict", Node.class).isVisible());
    }

    @Test
    @Tag("nightly")
    void filtersAreCopiedAndTakenAway(FxRobot robot) {
        startNew(robot);
        press(robot, "#addFilter");
        probe.type("#field:candidates[0].name", "Birch");
        press(robot, "#copyFilter");
        assertEquals(List.of("Birch", "Birch 2"), bench().candidates());
        assertTrue(probe.has("#field:candidates[1].name"));
        press(robot, "#removeFilter");
        assertEquals(List.of("Birch"), bench().candidates());
        assertTrue(probe.has("#field:candidates[0].name"));
    }

    @Test
    @Tag("nightly")
    void aTestIsOpenedWhereItIsWanted(FxRobot robot) {
        startNew(robot);
        press(robot, "#addFilter");
        assertFalse(probe.has("#field:candidates[0].tests.scaleTest.liftOff"));
        robot.interact(() -> probe.node("#test:candidates[0].tests.scaleTest", ToggleButton.class)
                .fire());
        probe.type("#field:candidates[0].tests.scaleTest.liftOff", "[2.1, 2.2] kg");
        assertTrue(probe.has("#field:candidates[0].tests.scaleTest.reseat"));
    }

    @Test
    void whatWasTypedOutlivesAKilledWindow(FxRobot robot) throws Exception {
        startNew(robot);
        typeOil(robot);
        String text = bench().draft().text();
        WindowProbe.until(10, () -> kept().stream().anyMatch(file -> read(file).endsWith(text)));
        // a killed program leaves its file behind; its number is no longer in use
        Files.move(kept().get(0), state.resolve("999999999999-1.recovery"));
        assertEquals(1, new Recovery(state).leftBehind().size());
        robot.interact(() -> {
            window.close();
            window = new CaseWindow(stage, CaseService.standard(), state, FileQuestions.DIALOGS);
        });
        probe.picture("bench-recovery");
        press(robot, "#takeUp");
        assertEquals(text, bench().draft().text());
        assertTrue(stage.getTitle().startsWith("*"));
        Path file = state.resolve("saved.yaml");
        robot.interact(() -> assertTrue(window.saveTo(file)));
        assertEquals(text, Files.readString(file));
        assertFalse(stage.getTitle().startsWith("*"));
        WindowProbe.until(10, () -> kept().isEmpty());
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(state)) {
            return files.filter(file -> file.toString().endsWith(".recovery")).toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return "";
        }
    }
}
