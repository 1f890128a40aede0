package org.coldpleat.ui.commandline.argument;

import java.nio.file.Path;
import java.util.Optional;
import org.coldpleat.shared.quantity.UnitSystem;
import picocli.CommandLine.Option;

/** How a result is to be written: format, units and pictures. */
public final class OutputArguments {
    /** How a result can be written. */
    public enum Format {
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

    public Format format() {
        return format;
    }

    public UnitSystem units() {
        return units;
    }

    /** Folder for pictures, if they are wanted. */
    public Optional<Path> plots() {
        return Optional.ofNullable(plots);
    }
}
