package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.coldpleat.model.run.ConfidenceResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Advance;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code confidence}: how sure the answers are. Nothing is written before the whole result stands. */
@Command(name = "confidence", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class ConfidenceCommand implements Callable<Integer> {
    private static final int FEWEST_DRAWS = 16;
    private static final int MOST_DRAWS = 1 << 20;

    /** How the result can be written. */
    enum Format {
        /** A page for a terminal. */
        TEXT,
        /** JSON in coherent SI. */
        JSON,
        /** A table for a spreadsheet. */
        CSV
    }

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "confidence.draws", defaultValue = "4096")
    private int draws;

    @Option(names = "--seed", paramLabel = "S", descriptionKey = "confidence.seed", defaultValue = "1")
    private long seed;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "confidence.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    ConfidenceCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.draws", FEWEST_DRAWS, MOST_DRAWS, draws));
        }
        OpenedCase opened = caseFile.open(service, console);
        Advance advance = Ansi.AUTO.enabled() ? new ProgressLine(console) : Advance.NONE;
        ConfidenceResult result = service.confidence(opened, draws, seed, advance)
                .orElseThrow(() -> new Stop(ExitCode.FAILURE, Texts.get("error.cancelled")));
        console.result(
                switch (format) {
                    case TEXT -> ConfidenceText.of(result, units);
                    case JSON -> ConfidenceJson.of(result);
                    case CSV -> ConfidenceCsv.of(result, units);
                });
        if (plots != null) {
            Pictures.ofConfidence(result, opened.invented(), plots, console);
        }
        return ExitCode.DONE;
    }
}
