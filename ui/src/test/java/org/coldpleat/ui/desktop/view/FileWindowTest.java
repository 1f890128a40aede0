package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What the file menu reads and writes; the questions which file is meant are answered by the test. */
@ExtendWith(ApplicationExtension.class)
class FileWindowTest {
    /** The case that is worked out soonest. */
    private static final Path HALF = Path.of("../demo-cases/half-the-area/case.yaml");

    @TempDir
    static Path folder;

    private final Deque<Path> answers = new ArrayDeque<>();
    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;
    private FxRobot robot;

    /** Gives the next answer to any question. */
    private final FileQuestions questions = new FileQuestions() {
        @Override
        public Optional<Path> open(Window owner, String title, Kind kind, Optional<Path> beside) {
            return Optional.ofNullable(answers.poll());
        }

        @Override
        public Optional<Path> save(Window owner, String title, Kind kind, Optional<Path> beside, String name) {
            return Optional.ofNullable(answers.poll());
        }
    };

    @Start
    void start(Stage given) throws IOException {
        stage = given;
        window = new CaseWindow(given, CaseService.standard(), Files.createTempDirectory("coldpleat"), questions);
        given.show();
    }

    @BeforeEach
    void openTheCase(FxRobot given) throws Exception {
        robot = given;
        probe = new WindowProbe(stage, robot);
        answers.add(HALF);
        choose("open");
        probe.ready();
    }

    @AfterEach
    void close() {
        robot.interact(window::close);
    }

    private void choose(String key) {
        robot.interact(() -> probe.choose(key));
    }

    private String status() {
        return probe.node("#status", Label.class).getText();
    }

    private CaseBench bench() {
        return window.bench().orElseThrow();
    }

    @Test
    @Tag("nightly")
    void reportIsWrittenBesideTheWindow() throws Exception {
        Path file = folder.resolve("report.html");
        answers.add(file);
        choose("report");
        WindowProbe.until(120, () -> status().equals(WindowTexts.get("status.reported", file.toString())));
        String report = Files.readString(file);
        assertTrue(report.contains("Half the area") && report.contains("id=\"settings\""), "parts missing");
        assertTrue(bench().candidates().stream().allMatch(report::contains));
    }

    /** Saving takes along what is being typed, though its field still has the keyboard. */
    @Test
    void savingTakesAlongWhatIsBeingTyped() throws Exception {
        Path file = folder.resolve("typed.yaml");
        robot.interact(() -> {
            TextField field = probe.node("#field:candidates[0].outside.diameter", TextField.class);
            field.requestFocus();
            field.setText("77.5 mm");
        });
        answers.add(file);
        choose("saveAs");
        assertTrue(Files.readString(file).contains("77.5 mm"), "what was typed is not in the file");
        assertFalse(stage.getTitle().startsWith("*"));
    }

    /** What changes nothing in the case is asked of one window, which takes seconds to open. */
    @TestFactory
    List<DynamicTest> whatLeavesTheCaseAsItIs() {
        return List.of(
                DynamicTest.dynamicTest("noAnswerChangesNothing", () -> noAnswerChangesNothing()),
                DynamicTest.dynamicTest(
                        "tableWithAnythingWrongChangesNothingAndSaysWhere",
                        () -> tableWithAnythingWrongChangesNothingAndSaysWhere()),
                DynamicTest.dynamicTest(
                        "reportOfAnotherKindIsRefusedInWords", () -> reportOfAnotherKindIsRefusedInWords()),
                DynamicTest.dynamicTest(
                        "filtersGoOutToATableAndComeBackInOneStep", () -> filtersGoOutToATableAndComeBackInOneStep()));
    }

    @Test
    @Tag("nightly")
    void reportThatIsStoppedLeavesNoFile() throws Exception {
        Path file = folder.resolve("stopped.html");
        answers.add(file);
        choose("report");
        choose("stop");
        assertEquals(WindowTexts.get("status.reportStopped"), status());
        // the next report shares the one thread of reports, so the stopped one has ended before it begins
        Path next = folder.resolve("next.pdf");
        answers.add(next);
        choose("report");
        WindowProbe.until(120, () -> Files.exists(next));
        assertFalse(Files.exists(file));
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(path -> path.toString().endsWith(".part")));
        }
    }

    private void reportOfAnotherKindIsRefusedInWords() {
        answers.add(folder.resolve("report.doc"));
        choose("report");
        assertTrue(status().contains(".html"), status());
        assertFalse(Files.exists(folder.resolve("report.doc")));
    }

    @Test
    void noReportOfACaseThatIsNotUnderstood() {
        answers.add(folder.resolve("never.html"));
        probe.type("#field:candidates[0].pleats.count", "many");
        choose("report");
        assertTrue(
                status().startsWith(WindowTexts.get("status.reportNotYet", "").strip()), status());
        assertEquals(1, answers.size(), "no file is asked for");
    }

    private void filtersGoOutToATableAndComeBackInOneStep() throws Exception {
        Path table = folder.resolve("filters.csv");
        answers.add(table);
        choose("exportSheets");
        assertTrue(Files.exists(table), status());
        String before = bench().draft().text();
        Files.writeString(table, Files.readString(table).replace("Half", "Bronze"));
        answers.add(table);
        choose("importSheets");
        WindowProbe.until(60, () -> status().contains("invented data"));
        assertTrue(bench().candidates().contains("Bronze"), bench().candidates().toString());
        robot.interact(
                () -> probe.node("#undo", javafx.scene.control.Button.class).fire());
        assertEquals(before, bench().draft().text());
    }

    private void tableWithAnythingWrongChangesNothingAndSaysWhere() throws Exception {
        Path table = folder.resolve("wrong.csv");
        Files.writeString(table, "name,pleat count\nBronze,fifty\nBronze,12,13,14\n");
        String before = bench().draft().text();
        answers.add(table);
        choose("importSheets");
        assertTrue(status().contains("wrong.csv"), status());
        assertEquals(before, bench().draft().text());
    }

    @Test
    void saveAsAsksAndACaseOpensFromWhereItWasSaved() throws Exception {
        Path file = folder.resolve("kept.yaml");
        probe.type("#field:candidates[0].pleats.count", "41");
        answers.add(file);
        choose("saveAs");
        assertFalse(bench().isChanged());
        assertTrue(Files.readString(file).contains("41"));
        answers.addAll(List.of(file));
        choose("open");
        probe.ready();
        assertEquals(Optional.of(file), bench().file());
    }

    private void noAnswerChangesNothing() {
        String before = bench().draft().text();
        for (String key : List.of("open", "saveAs", "importSheets", "exportSheets", "report")) {
            choose(key);
        }
        assertEquals(before, bench().draft().text());
    }
}
