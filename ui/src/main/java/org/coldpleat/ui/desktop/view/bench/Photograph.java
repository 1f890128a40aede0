package org.coldpleat.ui.desktop.view.bench;

import java.net.MalformedURLException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.image.Image;

/** Reads a picture from its file beside the window. */
final class Photograph {
    private Photograph() {}

    /**
     * Reads a picture.
     *
     * @param file empty if its path is none
     * @param shown told of the picture, on the thread of the window
     * @param failed told if there is none or it cannot be read
     */
    static void load(Optional<Path> file, Consumer<Image> shown, Runnable failed) {
        Optional<String> address = file.filter(Files::isRegularFile).flatMap(Photograph::address);
        if (address.isEmpty()) {
            failed.run();
            return;
        }
        Image image = new Image(address.get(), true);
        image.progressProperty().addListener((observed, was, is) -> {
            if (is.doubleValue() >= 1) {
                if (image.isError()) {
                    failed.run();
                } else {
                    shown.accept(image);
                }
            }
        });
        image.errorProperty().addListener(observed -> failed.run());
    }

    private static Optional<String> address(Path file) {
        try {
            return Optional.of(file.toUri().toURL().toString());
        } catch (MalformedURLException e) {
            return Optional.empty();
        }
    }
}
