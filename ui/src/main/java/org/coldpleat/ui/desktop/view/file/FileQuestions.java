package org.coldpleat.ui.desktop.view.file;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.coldpleat.ui.desktop.view.part.WindowTexts;

/** Asks which file is meant. */
public interface FileQuestions {
    /** Kinds of files. */
    enum Kind {
        /** Case files. */
        CASE,
        /** Tables of bench sheets. */
        TABLE,
        /** Reports. */
        REPORT,
        /** Photographs. */
        PHOTOGRAPH;

        List<String> endings() {
            return switch (this) {
                case CASE -> List.of("*.yaml", "*.yml");
                case TABLE -> List.of("*.csv");
                case REPORT -> List.of("*.html", "*.pdf");
                case PHOTOGRAPH -> List.of("*.png", "*.jpg", "*.jpeg", "*.gif", "*.bmp");
            };
        }
    }

    /** Asks with the dialogs of the system. */
    FileQuestions DIALOGS = new FileQuestions() {
        @Override
        public Optional<Path> open(Window owner, String title, Kind kind, Optional<Path> beside) {
            return Optional.ofNullable(chooser(title, kind, beside).showOpenDialog(owner))
                    .map(File::toPath);
        }

        @Override
        public Optional<Path> save(Window owner, String title, Kind kind, Optional<Path> beside, String name) {
            FileChooser chooser = chooser(title, kind, beside);
            chooser.setInitialFileName(name);
            return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
        }

        private FileChooser chooser(String title, Kind kind, Optional<Path> beside) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(title);
            beside.map(Path::toAbsolutePath)
                    .map(Path::getParent)
                    .filter(Files::isDirectory)
                    .ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
            String words = WindowTexts.get("kind." + kind.name().toLowerCase(Locale.ROOT));
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words, kind.endings()));
            return chooser;
        }
    };

    /**
     * Which file to read; empty if none after all.
     *
     * @param beside file in whose folder the search begins
     */
    Optional<Path> open(Window owner, String title, Kind kind, Optional<Path> beside);

    /**
     * Which file to write; empty if none after all.
     *
     * @param beside file in whose folder the search begins
     * @param name proposed
     */
    public Optional<Path> save(Window owner, String title, Kind kind, Optional<Path> beside, String name);
}
