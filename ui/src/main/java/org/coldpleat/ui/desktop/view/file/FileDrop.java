package org.coldpleat.ui.desktop.view.file;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Takes a single file that is dropped on a window. */
public final class FileDrop {
    private FileDrop() {}

    /**
     * Takes files from now on.
     *
     * @param taken told of the file once it is dropped
     */
    public static void on(Scene scene, Consumer<Path> taken) {
        scene.setOnDragOver(event -> {
            if (onlyFile(event).isPresent()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        scene.setOnDragDropped(event -> {
            Optional<Path> file = onlyFile(event);
            event.setDropCompleted(file.isPresent());
            event.consume();
            file.ifPresent(taken);
        });
    }

    private static Optional<Path> onlyFile(DragEvent event) {
        return event.getDragboard().hasFiles()
                        && event.getDragboard().getFiles().size() == 1
                ? Optional.of(event.getDragboard().getFiles().get(0).toPath())
                : Optional.empty();
    }
}
