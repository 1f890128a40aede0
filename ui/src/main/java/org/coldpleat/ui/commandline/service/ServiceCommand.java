package org.coldpleat.ui.commandline.service;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
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

/** {@code service}: how long each filter lasts. */
@Command(name = "service", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ServiceCommand implements Callable<Integer> {
    private static final double HOUR = 3600;
    private static final double MOST_HOURS = 100_000;

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--hours", paramLabel = "H", descriptionKey = "service.hours")
    private Double hours;

    @Mixin
    private OutputArguments output;

    public ServiceCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (hours != null && !(hours > 0 && hours <= MOST_HOURS)) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.hours", hours));
        }
        OpenedCase opened = caseFile.open(service, console);
        OptionalDouble horizon = hours == null ? OptionalDouble.empty() : OptionalDouble.of(hours * HOUR);
        ServiceResult result = opened.service(horizon)
                .map(Run::now)
                .orElseThrow(() -> new Stop(ExitCode.BAD_INPUT, Texts.get("error.noDuty")));
        console.result(
                switch (output.format()) {
                    case TEXT -> ServiceText.of(result, output.units());
                    case JSON -> ServiceOutput.json(result);
                    case CSV -> ServiceOutput.csv(result, output.units());
                });
        output.plots().ifPresent(folder -> Pictures.ofService(result, output.units(), folder, console));
        return ExitCode.DONE;
    }
}
