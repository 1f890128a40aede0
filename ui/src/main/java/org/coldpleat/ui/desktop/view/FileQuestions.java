package org.coldpleat.ui.desktop.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks which file is meant. */
interface FileQuestions {
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
        public Optional<Path> open(Window owner, String title, Kind kind) {
            return Optional.ofNullable(chooser(title, kind).showOpenDialog(owner))
                    .map(file -> file.toPath());
        }

        @Override
        public Optional<Path> save(Window owner, String title, Kind kind, String name) {
            FileChooser chooser = chooser(title, kind);
            chooser.setInitialFileName(name);
            return Optional.ofNullable(chooser.showSaveDialog(owner)).map(file -> file.toPath());
        }

        private FileChooser chooser(String title, Kind kind) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(title);
            String words = WindowTexts.get("kind." + kind.name().toLowerCase(Locale.ROOT));
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words, kind.endings()));
            return chooser;
        }
    };

    /** Which file to read; empty if none after all. */
    Optional<Path> open(Window owner, String title, Kind kind);

    /**
     * Which file to write; empty if none after all.
     *
     * @param name proposed
     */
    Optional<Path> save(Window owner, String title, Kind kind, String name);
}
