package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.file.Path;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A window with the case of the mountain hut in it and its answers worked out, for tests of what is done in it then. */
@ExtendWith(ApplicationExtension.class)
public abstract class HutWindow {
    static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");

    Stage stage;
    CaseWindow window;
    public WindowProbe probe;
    public FxRobot robot;

    /** Begins with a stage; the toolkit asks the test class itself for where to begin, not what it extends. */
    protected void begin(Stage given) throws IOException {
        stage = given;
        window = WindowProbe.window(given);
    }

    @BeforeEach
    void openTheCase(FxRobot given) throws Exception {
        robot = given;
        probe = new WindowProbe(stage, robot);
        robot.interact(() -> window.open(HUT));
        probe.ready();
    }

    @AfterEach
    void close() {
        robot.interact(window::close);
    }
}
