package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.viewmodel.SystemLook;
import org.coldpleat.ui.desktop.viewmodel.WindowMemory;

/** Puts a window where and how it was left, and remembers how it is left. */
final class WindowKeeper {
    private static final String SYSTEM = "system";
    private static final String DARK = "dark";
    private static final String LIGHT = "light";
    private static final double NARROWEST = 400;
    private static final double LOWEST = 300;

    /** When a window that has just opened is looked at again. */
    private static final List<Duration> LOOKS =
            List.of(Duration.millis(300), Duration.millis(900), Duration.millis(2500));

    private final Stage stage;
    private final WindowBar bar;
    private final WindowMemory memory;

    /** @param state folder for what outlives the window */
    WindowKeeper(Stage stage, WindowBar bar, Path state) {
        this.stage = stage;
        this.bar = bar;
        memory = new WindowMemory(state);
    }

    /** Puts the window as it was left. */
    void restore() {
        double x = memory.number("x").orElse(Double.NaN);
        double y = memory.number("y").orElse(Double.NaN);
        double width = memory.number("width").orElse(Double.NaN);
        double height = memory.number("height").orElse(Double.NaN);
        if (width >= NARROWEST && height >= LOWEST) {
            stage.setWidth(width);
            stage.setHeight(height);
            // a screen that is no longer there would hide the window
            if (!Screen.getScreensForRectangle(x, y, width / 2, height / 2).isEmpty()) {
                stage.setX(x);
                stage.setY(y);
            }
        }
        stage.setMaximized(Boolean.parseBoolean(memory.word("maximized", "")));
        memory.number("type").ifPresent(bar::type);
        for (UnitSystem units : UnitSystem.values()) {
            if (units.name().equals(memory.word("units", ""))) {
                bar.units(units);
            }
        }
        look();
    }

    /**
     * Sees to the size when the window stands, no larger than the screen has room: some window managers open a tiny window
     * at first and take its size a little later, and a small screen would hide its foot.
     */
    void settle() {
        if (stage.isMaximized()) {
            return;
        }
        double width = stage.getWidth();
        double height = stage.getHeight();
        Platform.runLater(() -> fit(width, height));
        Timeline looks = new Timeline();
        for (Duration after : LOOKS) {
            looks.getKeyFrames().add(new KeyFrame(after, event -> {
                if (stage.getWidth() < NARROWEST || stage.getHeight() < LOWEST) {
                    fit(width, height);
                }
            }));
        }
        looks.play();
    }

    private void fit(double width, double height) {
        Rectangle2D room = Screen.getScreensForRectangle(stage.getX(), stage.getY(), 1, 1).stream()
                .findFirst()
                .orElse(Screen.getPrimary())
                .getVisualBounds();
        // the same size again would not be asked for
        stage.setWidth(Math.min(width - 1, room.getWidth()));
        stage.setHeight(Math.min(height - 1, room.getHeight()));
        stage.setX(Math.max(room.getMinX(), Math.min(stage.getX(), room.getMaxX() - stage.getWidth())));
        stage.setY(Math.max(room.getMinY(), Math.min(stage.getY(), room.getMaxY() - stage.getHeight())));
    }

    private void look() {
        String look = memory.word("look", SYSTEM);
        if (look.equals(SYSTEM)) {
            Thread asking = new Thread(
                    () -> {
                        boolean dark = SystemLook.isDark();
                        Platform.runLater(() -> bar.dark(dark));
                    },
                    "look of the system");
            asking.setDaemon(true);
            asking.start();
        } else {
            bar.dark(look.equals(DARK));
        }
    }

    /** Light or dark was chosen by hand, and stays whatever the system does. */
    void chosen(boolean dark) {
        memory.put("look", dark ? DARK : LIGHT);
        keep();
    }

    /** Light and dark follow the system from now on. */
    void followSystem() {
        memory.put("look", SYSTEM);
        keep();
        look();
    }

    /** True if the tour was not yet seen through or skipped. */
    boolean isNew() {
        return !memory.word("tour", "").equals("seen");
    }

    /** The tour was seen. */
    void toured() {
        memory.put("tour", "seen");
        keep();
    }

    /** Remembers how the window is left. */
    void leave() {
        memory.put("maximized", stage.isMaximized());
        if (!stage.isMaximized() && !stage.isIconified()) {
            memory.put("x", stage.getX());
            memory.put("y", stage.getY());
            memory.put("width", stage.getWidth());
            memory.put("height", stage.getHeight());
        }
        memory.put("type", bar.type());
        memory.put("units", bar.units().name());
        keep();
    }

    private void keep() {
        try {
            memory.keep();
        } catch (IOException e) {
            // a window that forgets its place is no reason to trouble anybody
            memory.put("kept", false);
        }
    }
}
