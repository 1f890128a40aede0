package org.coldpleat.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The demo cases: the one that every run of the tests takes, and those that only the nightly run takes as well. */
public final class DemoCases {
    private static final String ONE = "half-the-area";

    private DemoCases() {}

    public static List<Path> all() throws IOException {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo-cases"))) {
            at = at.getParent();
        }
        try (Stream<Path> all = Files.walk(at.resolve("demo-cases"), 2)) {
            return all.filter(file -> file.endsWith("case.yaml")).sorted().toList();
        }
    }

    /** The case that is worked out soonest; it has everything that a case can be asked. */
    public static List<Path> one() throws IOException {
        return all().stream().filter(DemoCases::isOne).toList();
    }

    public static List<Path> others() throws IOException {
        return all().stream().filter(file -> !isOne(file)).toList();
    }

    private static boolean isOne(Path file) {
        return file.getParent().endsWith(ONE);
    }
}
