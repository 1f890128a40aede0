package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.Optional;
import org.coldpleat.shared.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** How a result is to be written: format, units and pictures. */
final class OutputArguments {
    /** How a result can be written. */
    enum Format {
        /** A page for a terminal. */
        TEXT,
        /** JSON in coherent SI. */
        JSON,
        /** A table for a spreadsheet. */
        CSV
    }

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    Format format() {
        return format;
    }

    UnitSystem units() {
        return units;
    }

    /** Folder for pictures, if they are wanted. */
    Optional<Path> plots() {
        return Optional.ofNullable(plots);
    }
}
