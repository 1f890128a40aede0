package org.coldpleat.ui.commandline.settings;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.ProgressLine;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.UsualSettings;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code settings}: both risks of a bypass valve over its opening pressure. */
@Command(name = "settings", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class SettingsCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "evidence.candidate")
    private String candidate;

    @Option(
            names = "--from",
            paramLabel = "PRESSURE",
            descriptionKey = "settings.from",
            defaultValue = UsualSettings.FROM)
    private String from;

    @Option(names = "--to", paramLabel = "PRESSURE", descriptionKey = "settings.to", defaultValue = UsualSettings.TO)
    private String to;

    @Mixin
    private OutputArguments output;

    public SettingsCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        double low = ValueArgument.positive("--from", from, Kind.PRESSURE_DIFFERENCE);
        double high = ValueArgument.positive("--to", to, Kind.PRESSURE_DIFFERENCE);
        if (!(high > low)) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.settingsRange", from, to));
        }
        OpenedCase opened = caseFile.open(service, console);
        if (candidate != null) {
            CaseArgument.requireCandidate(opened, candidate);
        }
        SettingsResult result = opened.settings(Optional.ofNullable(candidate), low, high)
                .with(ProgressLine.on(console, "settings.progress"))
                .orElseThrow(() -> new Stop(ExitCode.FAILURE, Texts.get("error.cancelled")));
        console.result(
                switch (output.format()) {
                    case TEXT -> SettingsText.of(result, opened.candidates(), output.units());
                    case JSON -> SettingsJson.of(result, opened.candidates());
                    case CSV -> SettingsCsv.of(result, output.units());
                });
        output.plots().ifPresent(folder -> Pictures.ofSettings(result, output.units(), folder, console));
        if (!result.isAnswered()) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.unresolved"));
        }
        return ExitCode.DONE;
    }
}
