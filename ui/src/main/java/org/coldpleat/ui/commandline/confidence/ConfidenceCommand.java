package org.coldpleat.ui.commandline.confidence;

import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.ProgressLine;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code confidence}: how sure the answers are. Nothing is written before the whole result stands. */
@Command(name = "confidence", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ConfidenceCommand implements Callable<Integer> {
    private static final int FEWEST_DRAWS = 16;
    private static final int MOST_DRAWS = 1 << 20;

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "confidence.draws", defaultValue = "4096")
    private int draws;

    @Option(names = "--seed", paramLabel = "S", descriptionKey = "confidence.seed", defaultValue = "1")
    private long seed;

    @Mixin
    private OutputArguments output;

    public ConfidenceCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.draws", FEWEST_DRAWS, MOST_DRAWS, draws));
        }
        OpenedCase opened = caseFile.open(service, console);
        Progress progress = ProgressLine.on(console, "confidence.progress");
        ConfidenceResult result = opened.confidence(draws, seed)
                .with(progress)
                .orElseThrow(() -> new Stop(ExitCode.FAILURE, Texts.get("error.cancelled")));
        console.result(
                switch (output.format()) {
                    case TEXT -> ConfidenceText.of(result, output.units());
                    case JSON -> ConfidenceJson.of(result);
                    case CSV -> ConfidenceCsv.of(result, output.units());
                });
        output.plots()
                .ifPresent(folder -> Pictures.ofConfidence(result, opened.invented(), output.units(), folder, console));
        return ExitCode.DONE;
    }
}
