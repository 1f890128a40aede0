package org.coldpleat.ui.commandline.export;

import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Option;

/** How everything about a case is worked out and written: units, and the draws behind its chances, which may be none. */
public final class WholeCaseArguments {
    private static final int FEWEST_DRAWS = 16;
    private static final int MOST_DRAWS = 1 << 20;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "report.draws", defaultValue = "" + ReportRun.DRAWS)
    private int draws;

    @Option(names = "--seed", paramLabel = "S", descriptionKey = "confidence.seed", defaultValue = "" + ReportRun.SEED)
    private long seed;

    UnitSystem units() {
        return units;
    }

    /** Number of draws, 0 for none; stops at one that is neither none nor enough. */
    int draws() {
        if (draws != 0 && (draws < FEWEST_DRAWS || draws > MOST_DRAWS)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.reportDraws", FEWEST_DRAWS, MOST_DRAWS, draws));
        }
        return draws;
    }

    long seed() {
        return seed;
    }
}
