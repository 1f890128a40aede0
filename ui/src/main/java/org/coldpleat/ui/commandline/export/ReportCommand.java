package org.coldpleat.ui.commandline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.report.ReportFile;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code report}: everything about a case in one document. */
@Command(name = "report", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ReportCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "report.out", required = true)
    private Path out;

    @Mixin
    private WholeCaseArguments whole;

    public ReportCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        int draws = whole.draws();
        if (!ReportFile.isNamed(out)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.reportName", out));
        }
        OpenedCase opened = caseFile.open(service, console);
        try {
            ReportFile.write(opened, out, whole.units(), draws, whole.seed(), Progress.NONE);
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.report", e));
        }
        console.message(Texts.get("plots.written", out));
        return ExitCode.DONE;
    }
}
