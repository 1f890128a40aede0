package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * A window with the case of the mountain hut in it and its answers worked out, for tests of what is done in it then. A
 * window takes seconds to be laid out, so the tests of a class have one; the case is opened anew for each.
 */
@ExtendWith(ApplicationExtension.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class HutWindow {
    static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");

    Stage stage;
    CaseWindow window;
    public WindowProbe probe;
    public FxRobot robot;
    private double temperature;

    /** Begins with a stage; the toolkit asks the test class itself for where to begin, not what it extends. */
    protected void begin(Stage given) throws IOException {
        if (window == null) {
            stage = given;
            window = WindowProbe.window(given);
            temperature = new WindowProbe(stage, new FxRobot())
                    .node("#temperature", Slider.class)
                    .getValue();
        }
        given.show();
    }

    /** The case that is opened. */
    protected Path file() {
        return HUT;
    }

    @BeforeEach
    void openTheCase(FxRobot given) throws Exception {
        robot = given;
        probe = new WindowProbe(stage, robot);
        robot.interact(() -> {
            lookAsAtFirst();
            window.open(file());
        });
        probe.ready();
    }

    /** Nothing that a test looked at stays chosen for the next. */
    private void lookAsAtFirst() {
        @SuppressWarnings("unchecked")
        ChoiceBox<UnitSystem> units = probe.node("#units", ChoiceBox.class);
        units.setValue(UnitSystem.METRIC);
        ChoiceBox<?> states = probe.node("#state", ChoiceBox.class);
        if (!states.getItems().isEmpty()) {
            states.getSelectionModel().select(0);
        }
        probe.node("#temperature", Slider.class).setValue(temperature);
        probe.node("#dark", ToggleButton.class).setSelected(false);
        probe.node("#whatIf", TitledPane.class).setExpanded(false);
        probe.node("#tabs", TabPane.class).getSelectionModel().select(0);
        for (String chart : List.of("pressure", "share")) {
            ToggleButton table = probe.node("#chart-" + chart + "-table", ToggleButton.class);
            if (table.isSelected()) {
                table.fire();
            }
        }
    }

    @AfterAll
    void close() {
        new FxRobot().interact(window::close);
    }
}
