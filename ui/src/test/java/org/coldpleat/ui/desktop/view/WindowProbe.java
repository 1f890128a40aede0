package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.embed.swing.SwingFXUtils;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToolBar;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.Stale;
import org.coldpleat.ui.service.CaseService;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Finds the parts of a window by their ids, and types into them. */
public record WindowProbe(Stage stage, FxRobot robot) {
    public <T extends Node> T node(String id, Class<T> type) {
        // ids hold dots and brackets, which a selector would read as its own signs
        return type.cast(find(stage.getScene().getRoot(), id.substring(1)));
    }

    boolean has(String id) {
        return find(stage.getScene().getRoot(), id.substring(1)) != null;
    }

    /** True while the answers belong to values before a change. */
    boolean isStale() {
        return Stale.is(node("#verdict", Node.class));
    }

    private static Node find(Node at, String id) {
        if (id.equals(at.getId())) {
            return at;
        }
        List<? extends Node> below =
                inside(at).orElseGet(() -> at instanceof Parent parent ? parent.getChildrenUnmodifiable() : List.of());
        for (Node node : below) {
            Node found = find(node, id);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** What a control holds that other nodes are put into; empty for any other node. */
    static Optional<List<? extends Node>> inside(Node at) {
        return Optional.ofNullable(
                at instanceof TabPane tabs
                        ? tabs.getTabs().stream().map(tab -> tab.getContent()).toList()
                        : at instanceof ScrollPane pane
                                ? List.of(pane.getContent())
                                : at instanceof SplitPane split
                                        ? split.getItems()
                                        : at instanceof ToolBar bar ? bar.getItems() : null);
    }

    /** A window of the program on a stage, with a folder of its own for what it remembers. */
    static CaseWindow window(Stage stage) throws IOException {
        CaseWindow window = new CaseWindow(
                stage, CaseService.standard(), Files.createTempDirectory("coldpleat"), FileQuestions.DIALOGS);
        stage.show();
        return window;
    }

    /** Waits until the answers to a demo case stand in the window. */
    public void ready() throws Exception {
        until(60, () -> node("#status", Label.class).getText().contains("invented data"));
    }

    static void until(int seconds, Callable<Boolean> condition) throws Exception {
        WaitForAsyncUtils.waitFor(seconds, TimeUnit.SECONDS, condition);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Writes a text into an input and ends it with the enter key. */
    public void type(String id, String text) {
        robot.interact(() -> {
            Node input = node(id, Node.class);
            TextField editor = input instanceof ComboBox<?> box ? box.getEditor() : (TextField) input;
            editor.setText(text);
            Event.fireEvent(input, key(KeyCode.ENTER));
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Chooses an entry of a menu; to be called on the thread of the window. */
    void choose(String key) {
        stage.getScene().getRoot().lookupAll(".menu-bar").stream()
                .map(MenuBar.class::cast)
                .flatMap(bar -> bar.getMenus().stream())
                .flatMap(menu -> menu.getItems().stream())
                .filter(item -> ("menu-" + key).equals(item.getId()))
                .forEach(MenuItem::fire);
    }

    /** Writes a picture of the window where the property {@code window.pictures} names a folder. */
    public void picture(String name) throws IOException {
        String folder = System.getProperty("window.pictures");
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> image[0] = stage.getScene().snapshot(null));
        if (folder != null) {
            Path target = Path.of(folder).resolve(name + ".png");
            Files.createDirectories(target.getParent());
            ImageIO.write(SwingFXUtils.fromFXImage(image[0], null), "png", target.toFile());
        }
    }

    public static KeyEvent key(KeyCode code) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false);
    }
}
