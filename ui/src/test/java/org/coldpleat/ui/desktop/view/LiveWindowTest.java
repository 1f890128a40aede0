package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.desktop.view.chart.ChartNumbers;
import org.coldpleat.ui.desktop.view.chart.NumberRow;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Pages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What the window shows while values are being typed. */
@ExtendWith(ApplicationExtension.class)
class LiveWindowTest {
    /** The case that is worked out soonest. */
    private static final Path HALF = Path.of("../demo-cases/half-the-area/case.yaml");

    private static final String PRESSURE = "#field:candidates[0].bypass.openingPressure";
    /** Filters enough for a comparison that lasts until someone stops it. */
    private static final int MANY = 150;

    /** What stood in the window when its curves were redrawn. */
    private record Shown(boolean stale, String note, List<NumberRow> curves, String page, String verdict) {}

    private final CaseService service = CaseService.standard();
    private final List<Shown> shown = new ArrayList<>();
    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;

    @Start
    void start(Stage given) throws IOException {
        stage = given;
        window = new CaseWindow(given, service, Files.createTempDirectory("coldpleat"), FileQuestions.DIALOGS);
        given.show();
    }

    @BeforeEach
    void openTheCase(FxRobot robot) throws Exception {
        probe = new WindowProbe(stage, robot);
        robot.interact(() -> window.open(HALF));
        probe.ready();
        Label note = probe.node("#chart-share-note", Label.class);
        // the numbers are in the window only while they are looked at
        robot.interact(
                () -> probe.node("#chart-pressure-table", ToggleButton.class).fire());
        robot.interact(() -> note.textProperty().addListener(observed -> shown.add(now(note.getText()))));
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(window::close);
    }

    private Shown now(String note) {
        boolean stale = probe.isStale();
        return new Shown(stale, note, curves(), page(), window.verdictWords());
    }

    private List<NumberRow> curves() {
        TableView<?> table = probe.node("#chart-pressure-numbers", TableView.class);
        return table.getItems().stream().map(row -> (NumberRow) row).toList();
    }

    private String page() {
        return probe.node("#page", TextArea.class).getText();
    }

    private static List<NumberRow> rows(StateSheet sheet) {
        return ChartNumbers.rows(TemperatureCharts.pressure(sheet, UnitSystem.METRIC));
    }

    private OpenedCase opened() {
        return window.bench().orElseThrow().opened().orElseThrow();
    }

    @Test
    void curvesFollowAnEditBeforeTheComparisonWhichThenTakesTheirPlace() throws Exception {
        String pageBefore = page();
        List<NumberRow> before = curves();
        // The area moves the curve itself; the opening pressure alone would move only where it is crossed.
        probe.type("#field:candidates[0].pleats.count", "41");
        probe.ready();
        OpenedCase edited = opened();
        assertEquals(2, shown.size(), "drawn once at a glance, once compared");
        Shown first = shown.get(0);
        assertTrue(first.stale());
        assertFalse(first.note().isBlank());
        assertNotEquals(before, first.curves());
        String state = edited.states().get(0);
        assertEquals(rows(RunCharts.sheet(edited.quickCurves(state).now())), first.curves());
        assertEquals(pageBefore, first.page());
        assertTrue(first.verdict().startsWith(WindowTexts.get("answers.stale")), first.verdict());
        assertEquals("", shown.get(1).note());
        assertEquals(rows(RunCharts.sheets(edited.compare().now()).get(0)), curves());
        assertEquals(Pages.comparison(edited.compare().now(), UnitSystem.METRIC), page());
        assertNotEquals(pageBefore, page());
        assertFalse(window.verdictWords().contains(WindowTexts.get("answers.stale")));
        assertFalse(probe.isStale());
    }

    @Test
    @Tag("nightly")
    void theLastOfManyEditsStands() throws Exception {
        for (String pressure : List.of("6 psi", "8 psi", "10 psi", "12 psi")) {
            probe.type(PRESSURE, pressure);
        }
        probe.ready();
        assertEquals(
                "12 psi",
                window.bench()
                        .orElseThrow()
                        .draft()
                        .value(PRESSURE.substring(7))
                        .orElseThrow());
        assertEquals(Pages.comparison(opened().compare().now(), UnitSystem.METRIC), page());
        assertEquals(rows(RunCharts.sheets(opened().compare().now()).get(0)), curves());
    }

    @Test
    void theStartIsWorkedOutWhenLookedAtAndACaseWithoutOneSaysSo(FxRobot robot) throws Exception {
        PicturePane timeline = probe.node("#chart-coldStart", PicturePane.class);
        assertNull(timeline.getAccessibleText());
        robot.interact(() -> {
            TabPane tabs = probe.node("#tabs", TabPane.class);
            tabs.getTabs().stream()
                    .filter(tab -> tab.getId().equals("tab-coldStart"))
                    .forEach(tab -> tabs.getSelectionModel().select(tab));
        });
        WindowProbe.until(60, () -> timeline.getAccessibleText() != null);
        assertTrue(timeline.getAccessibleText().contains("Half"), timeline.getAccessibleText());
        probe.picture("start-up");
        assertFalse(probe.has("#chart-coldStart-empty"));
        robot.interact(() -> {
            try {
                window.open(withoutStart());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        WindowProbe.until(60, () -> probe.has("#chart-coldStart-empty"));
        assertFalse(probe.has("#chart-coldStart"));
    }

    @Test
    @Tag("nightly")
    void stopEndsTheComparisonAndItsAdvance(FxRobot robot) throws Exception {
        ProgressBar progress = probe.node("#status-progress", ProgressBar.class);
        assertFalse(progress.isVisible());
        robot.interact(() -> {
            for (int i = 0; i < MANY; i++) {
                window.bench().orElseThrow().copyCandidate(0);
            }
        });
        List<String> verdict = window.verdictWords().lines().skip(1).toList();
        probe.type(PRESSURE, "7 psi");
        WindowProbe.until(60, progress::isVisible);
        assertTrue(progress.getProgress() > 0 && progress.getProgress() < 1, progress.getProgress() + "");
        robot.interact(() -> probe.choose("stop"));
        assertFalse(progress.isVisible());
        assertEquals(
                WindowTexts.get("status.stoppedAfterGlance"),
                probe.node("#status", Label.class).getText());
        assertTrue(window.verdictWords().startsWith(WindowTexts.get("answers.stale")));
        assertEquals(verdict, window.verdictWords().lines().skip(1).toList());
        probe.type(PRESSURE, "9 psi");
        probe.ready();
        assertFalse(progress.isVisible());
    }

    /** The same case without its start, and without the duty that takes the warming up from it. */
    private static Path withoutStart() throws IOException {
        Path file = Files.createTempFile("coldpleat", ".yaml");
        String text = Files.readString(HALF);
        return Files.writeString(file, text.replaceAll("(?m)^(?:start|duty):.*\\R(?:(?:[ #].*)?\\R)*", ""));
    }

    /** True if a part is drawn paler than it is, or what holds it is. */
    private static boolean pale(Node part) {
        return part != null && (part.getOpacity() < 1 || pale(part.getParent()));
    }

    @Test
    void whatIsNotUnderstoodLeavesTheCurvesPale(FxRobot robot) {
        probe.type("#field:candidates[0].pleats.count", "plenty");
        assertEquals(List.of(), shown);
        robot.interact(() -> {
            stage.getScene().getRoot().applyCss();
            for (String part : List.of("#verdict", "#page", "#cutaway", "#chart-pressure-numbers")) {
                assertTrue(pale(probe.node(part, Node.class)), part);
            }
        });
        assertTrue(window.verdictWords().startsWith(WindowTexts.get("answers.stale")));
    }
}
