package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.TreeView;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * The pictures of the window: sizes, looks, units and type sizes by turns over the main screens. Where the property
 * {@code window.pictures} names a folder they are written there.
 */
@ExtendWith(ApplicationExtension.class)
class WindowPicturesTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");

    private static final Path GUIDE = Path.of("../docs/guide/three-filters.yaml");

    /**
     * How the window is shown.
     *
     * @param type size of the type [%]
     */
    private record Look(int width, int height, boolean dark, UnitSystem units, int type) {
        String name(String tab) {
            return "window-" + width + (dark ? "-dark-" : "-light-")
                    + units.name().toLowerCase(Locale.ROOT) + "-" + type + "-" + tab;
        }
    }

    private static final List<Look> LOOKS = List.of(
            new Look(1280, 800, false, UnitSystem.METRIC, 100),
            new Look(1280, 800, true, UnitSystem.US, 100),
            new Look(1280, 800, false, UnitSystem.SI, 150),
            new Look(1920, 1080, true, UnitSystem.METRIC, 100),
            new Look(1920, 1080, false, UnitSystem.US, 150));

    private static final List<String> SCREENS = List.of(
            "pressure",
            "share",
            "cutaway",
            "shareMap",
            "coldStart",
            "loading",
            "pleats",
            "settings",
            "confidence",
            "page",
            "explanation");

    private Stage stage;
    private CaseWindow window;
    private WindowProbe probe;

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
    void oneScreenInOneLook(FxRobot robot) throws Exception {
        walk(robot, LOOKS.subList(0, 1), SCREENS.subList(0, 1));
    }

    @Test
    @Tag("nightly")
    void allScreensInAllLooks(FxRobot robot) throws Exception {
        walk(robot, LOOKS, SCREENS);
    }

    private void walk(FxRobot robot, List<Look> looks, List<String> screens) throws Exception {
        probe = new WindowProbe(stage, robot);
        robot.interact(() -> window.open(HUT));
        WindowProbe.until(
                120, () -> probe.node("#status", Label.class).getText().contains("invented data"));
        for (Look look : looks) {
            show(robot, look);
            for (String screen : screens) {
                if (look.name(screen).matches(System.getProperty("window.only", ".*"))) {
                    look(robot, screen);
                    probe.picture(look.name(screen));
                }
            }
            assertTrue(
                    stage.getScene().getWidth() >= look.width() - 1,
                    "width " + stage.getScene().getWidth());
        }
    }

    @Test
    @Tag("nightly")
    void pictureOfTheGuide(FxRobot robot) throws Exception {
        probe = new WindowProbe(stage, robot);
        robot.interact(() -> window.open(GUIDE));
        probe.ready();
        show(robot, LOOKS.get(0));
        robot.interact(() -> probe.node("#state", ChoiceBox.class)
                .getSelectionModel()
                .select(probe.node("#state", ChoiceBox.class).getItems().indexOf("running")));
        look(robot, "pressure");
        probe.picture("guide/window");
    }

    private void show(FxRobot robot, Look look) {
        robot.interact(() -> {
            stage.setWidth(look.width());
            stage.setHeight(look.height());
            probe.node("#candidate", ChoiceBox.class).getSelectionModel().select(1);
            probe.node("#temperature", Slider.class).setValue(-20);
            probe.node("#type", Slider.class).setValue(look.type());
            ToggleButton dark = probe.node("#dark", ToggleButton.class);
            dark.setSelected(look.dark());
            ChoiceBox<?> units = probe.node("#units", ChoiceBox.class);
            units.getSelectionModel().select(units.getItems().indexOf(look.units()));
        });
    }

    /** The chains that are shown; null before the first. */
    private Object chains() {
        return probe.has("#explanation")
                ? probe.node("#explanation", TreeView.class).getRoot()
                : null;
    }

    private void look(FxRobot robot, String screen) throws Exception {
        if (screen.equals("explanation")) {
            Object before = chains();
            robot.interact(() -> probe.node("#answer:Copper", Button.class).fire());
            WindowProbe.until(120, () -> chains() != before);
            return;
        }
        robot.interact(() -> {
            TabPane tabs = probe.node("#tabs", TabPane.class);
            tabs.getTabs().stream()
                    .filter(tab -> tab.getId().equals("tab-" + screen))
                    .forEach(tab -> tabs.getSelectionModel().select(tab));
        });
        if (probe.has("#study-" + screen)) {
            WindowProbe.until(
                    120,
                    () -> probe.node("#study-" + screen + "-stop", Button.class).isDisabled());
        } else if (probe.has("#chart-map") && !screen.equals("page")) {
            String id = screen.equals("shareMap")
                    ? "#chart-map"
                    : screen.equals("cutaway") ? "#cutaway" : "#chart-" + screen;
            WindowProbe.until(120, () -> probe.node(id, PicturePane.class).getAccessibleText() != null);
        }
    }
}
