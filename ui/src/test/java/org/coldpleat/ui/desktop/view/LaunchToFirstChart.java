package org.coldpleat.ui.desktop.view;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.image.ImageView;
import javafx.stage.Window;
import org.coldpleat.ui.desktop.view.chart.PicturePane;

/**
 * Measures the time from the start of the virtual machine to the first chart in the window, on a display. Run with the
 * test class path of this module and the flags of the launcher; the argument is a case file.
 */
final class LaunchToFirstChart {
    private static final long PATIENCE = 60_000;

    private LaunchToFirstChart() {}

    public static void main(String[] arguments) throws InterruptedException {
        Thread window = new Thread(() -> WindowStart.open(Optional.of(Path.of(arguments[0]))), "window");
        window.start();
        long start = ManagementFactory.getRuntimeMXBean().getStartTime();
        AtomicBoolean drawn = new AtomicBoolean();
        while (!drawn.get() && System.currentTimeMillis() - start < PATIENCE) {
            Thread.sleep(10);
            try {
                Platform.runLater(() -> drawn.set(isDrawn()));
            } catch (IllegalStateException e) {
                // the toolkit has not begun; ask again
            }
        }
        System.out.println(drawn.get() ? System.currentTimeMillis() - start + " ms" : "no chart");
        Platform.exit();
    }

    private static boolean isDrawn() {
        return Window.getWindows().stream()
                .filter(Window::isShowing)
                .map(one -> one.getScene().getRoot().lookup("#chart-pressure"))
                .anyMatch(LaunchToFirstChart::hasPicture);
    }

    private static boolean hasPicture(Node pane) {
        return pane instanceof PicturePane picture
                && picture.isVisible()
                && picture.getChildrenUnmodifiable().stream()
                        .anyMatch(child -> child instanceof ImageView view && view.getImage() != null);
    }
}
