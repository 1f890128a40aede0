package org.coldpleat.ui.commandline.multipass;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.progress.Run;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code multipass}: a virtual multi-pass test of one candidate. */
@Command(name = "multipass", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class MultiPassCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--leak", paramLabel = "SHARE", descriptionKey = "multipass.leak")
    private String leak;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "format", defaultValue = "text")
    private OutputArguments.Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    public MultiPassCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        double share = leak == null ? 0 : ValueArgument.positive("--leak", leak, Kind.FRACTION);
        if (!(share < 1)) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.leak", leak));
        }
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        MultiPassReport report = opened.multiPass(candidate, share)
                .map(Run::now)
                .orElseThrow(() -> new Stop(ExitCode.BAD_INPUT, Texts.get("error.noMultiPass", candidate)));
        console.result(
                switch (format) {
                    case TEXT -> MultiPassOutput.text(report, units);
                    case JSON -> MultiPassOutput.json(report);
                    case CSV -> MultiPassOutput.csv(report, units);
                });
        if (plots != null) {
            Pictures.ofMultiPass(report, units, plots, console);
        }
        if (!report.terminalReached()) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.notTerminal"));
        }
        return ExitCode.DONE;
    }
}
