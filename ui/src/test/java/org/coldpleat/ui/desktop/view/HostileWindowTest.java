package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Predicate;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.ui.desktop.viewmodel.BareNumber;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.SheetRow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Whatever is typed into any field of any sheet is kept, says what is wrong with it at its field, and can be taken back. */
@ExtendWith(ApplicationExtension.class)
class HostileWindowTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");

    /** The case that is worked out soonest. */
    private static final Path HALF = Path.of("../demo-cases/half-the-area/case.yaml");

    /** Sheets as they are chosen, each with where its fields stand in the case. */
    private static final List<List<String>> SHEETS = List.of(
            List.of("case", ""),
            List.of("oil", "oil"),
            List.of("engine", "engine"),
            List.of("flowStand", "flowStand"),
            List.of("temperatures", "temperatures"),
            List.of("start", "start"),
            List.of("duty", "duty"),
            List.of("candidates", "candidates[0]"));

    /** Nothing of this is an amount of anything. */
    private static final List<String> NO_AMOUNT = List.of(
            "NaN",
            "1e999 mm",
            "9".repeat(10_000),
            "<script>alert(1)</script>",
            "\u202E12 mm",
            "7 parsecs",
            "': { [ ] } # & * ! | > % @ `",
            "1,2,3",
            "Infinity psi");

    /** One field in so many gets a text of the second list as well, so that the walk ends within a minute. */
    private static final int MAYBE_EVERY = 3;

    /** What may be an amount, and is not one of most fields. */
    private static final List<String> MAYBE = List.of("-5 psi", "12 cSt", "0", "");

    private final List<Throwable> thrown = new CopyOnWriteArrayList<>();
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

    private CaseBench bench() {
        return window.bench().orElseThrow();
    }

    /** A field of every type, and of as many units as there are texts; {@code HostileTextTest} has every unit. */
    @Test
    void aFieldOfEveryTypeBearsWhateverIsTyped(FxRobot robot) throws Exception {
        Set<String> seen = new HashSet<>();
        int typed = typeInto(
                robot,
                HALF,
                row -> seen.add(row.field().type().name())
                        || (seen.size() <= NO_AMOUNT.size()
                                && seen.add(row.field().unit())));
        assertTrue(typed > NO_AMOUNT.size(), "fields: " + typed);
    }

    @Test
    @Tag("nightly")
    void everyFieldOfEverySheetBearsWhateverIsTyped(FxRobot robot) throws Exception {
        int typed = typeInto(robot, HUT, row -> true);
        assertTrue(typed > 100, "fields: " + typed);
    }

    /** Types into the fields that are asked for, and says how many there were. */
    private int typeInto(FxRobot robot, Path file, Predicate<SheetRow> wanted) throws Exception {
        WindowProbe probe = new WindowProbe(stage, robot);
        robot.interact(
                () -> Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> thrown.add(failure)));
        robot.interact(() -> window.open(file));
        probe.ready();
        // nothing is looked at, so nothing need be painted
        robot.interact(stage::hide);
        String before = bench().draft().text();
        int typed = 0;
        for (List<String> sheet : SHEETS) {
            robot.interact(() -> choose(probe, sheet.get(0)));
            for (SheetRow row : fields(probe, sheet.get(1))) {
                if (!wanted.test(row)) {
                    continue;
                }
                type(probe, row, NO_AMOUNT.get(typed % NO_AMOUNT.size()), true);
                if (typed % MAYBE_EVERY == 0) {
                    type(probe, row, MAYBE.get(typed / MAYBE_EVERY % MAYBE.size()), false);
                }
                assertEquals(before, bench().draft().text(), row.path());
                typed++;
            }
        }
        assertEquals(List.of(), thrown);
        probe.ready();
        return typed;
    }

    @SuppressWarnings("unchecked")
    private static void choose(WindowProbe probe, String sheet) {
        ChoiceBox<String> sheets = probe.node("#sheets", ChoiceBox.class);
        assertTrue(sheets.getItems().contains(sheet), sheet + " of " + sheets.getItems());
        sheets.setValue(sheet);
    }

    /** Fields of a sheet that stand in the window; those of tests that were not made are closed. */
    private List<SheetRow> fields(WindowProbe probe, String path) {
        List<SheetRow> fields = new ArrayList<>(bench().sheet(path));
        fields.removeIf(row -> row.type() != SheetRow.Type.VALUE || !probe.has("#field:" + row.path()));
        assertFalse(fields.isEmpty(), path);
        return fields;
    }

    private void type(WindowProbe probe, SheetRow row, String text, boolean noAmount) {
        String kept = BareNumber.completed(text, row.field().unit());
        boolean changes = !kept.equals(row.typed());
        probe.type("#field:" + row.path(), text);
        assertEquals(kept, bench().draft().value(row.path()).orElse(""), row.path());
        boolean free =
                row.field().type() == Field.Type.TEXT && row.field().choices().isEmpty();
        if (noAmount && !free && kept.equals(text)) {
            Label problem = probe.node("#problem:" + row.path(), Label.class);
            assertFalse(bench().isUnderstood(), row.path() + " understood " + shown(text));
            assertTrue(problem.isVisible() && !problem.getText().isBlank(), row.path() + " took " + shown(text));
        }
        if (changes) {
            probe.robot().interact(() -> probe.choose("undo"));
        }
        assertEquals(row.typed(), bench().draft().value(row.path()).orElse(""), row.path());
    }

    private static String shown(String text) {
        return text.substring(0, Math.min(text.length(), 30));
    }
}
