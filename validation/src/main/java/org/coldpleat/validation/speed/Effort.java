package org.coldpleat.validation.speed;

import java.nio.file.Path;
import org.openjdk.jmh.runner.options.TimeValue;

/** How long is measured, and in which folder of the checkout the page is written. */
enum Effort {
    /** For the page. */
    FULL(2, 2, 2, TimeValue.seconds(1), 3, Path.of("docs")),
    /** To see whether the tool runs. */
    QUICK(1, 1, 1, TimeValue.milliseconds(50), 1, Path.of("validation", "target"));

    final int forks;
    final int warmUps;
    final int measurements;
    final TimeValue each;
    final int runsOfCommand;
    final Path folder;

    Effort(int forks, int warmUps, int measurements, TimeValue each, int runsOfCommand, Path folder) {
        this.forks = forks;
        this.warmUps = warmUps;
        this.measurements = measurements;
        this.each = each;
        this.runsOfCommand = runsOfCommand;
        this.folder = folder;
    }

    /** In words of the page. */
    String words() {
        if (this == QUICK) {
            return "**A trial with settings too short for any figure here to be quoted.**";
        }
        return "Benchmarks: the mean of %d virtual machines, %d times %s each after %d to warm up. Commands: the median of %d."
                .formatted(forks, measurements, each, warmUps, runsOfCommand);
    }
}
