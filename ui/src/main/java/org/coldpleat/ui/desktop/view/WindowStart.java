package org.coldpleat.ui.desktop.view;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Application;

/** Starts the toolkit; the one class of the window that the start of the program knows. */
public final class WindowStart {
    private WindowStart() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @param file case to open; none for an empty window
     * @return false if there is no display
     */
    public static boolean open(Optional<Path> file) {
        if (!hasDisplay()) {
            return false;
        }
        try {
            Application.launch(
                    WindowApplication.class, file.map(Path::toString).stream().toArray(String[]::new));
            return true;
        } catch (UnsupportedOperationException e) {
            return false;
        }
    }

    private static boolean hasDisplay() {
        boolean screenless =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux")
                        && System.getenv("DISPLAY") == null
                        && System.getenv("WAYLAND_DISPLAY") == null;
        return !screenless || System.getProperty("glass.platform") != null;
    }
}
