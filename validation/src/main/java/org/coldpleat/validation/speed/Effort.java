package org.coldpleat.validation.speed;

import java.nio.file.Path;

/** How long is measured, and in which folder of the checkout the page is written. */
enum Effort {
    /** For the page. */
    FULL(2, 2, 2, 1000, 3, Path.of("docs")),
    /** To see whether the tool runs. */
    QUICK(1, 1, 1, 50, 1, Path.of("validation", "target"));

    final int forks;
    final int warmUps;
    final int measurements;
    /** Length of a measurement [ms]. */
    final int milliseconds;

    final int runsOfCommand;
    final Path folder;

    Effort(int forks, int warmUps, int measurements, int milliseconds, int runsOfCommand, Path folder) {
        this.forks = forks;
        this.warmUps = warmUps;
        this.measurements = measurements;
        this.milliseconds = milliseconds;
        this.runsOfCommand = runsOfCommand;
        this.folder = folder;
    }

    /** In words of the page. */
    String words() {
        if (this == QUICK) {
            return "**A trial with settings too short for any figure here to be quoted.**";
        }
        return "Benchmarks: the mean of %d virtual machines, %d times %d ms each after %d to warm up. Commands: the median of %d."
                .formatted(forks, measurements, milliseconds, warmUps, runsOfCommand);
    }
}
