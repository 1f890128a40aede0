package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.coldpleat.model.run.SettingsResult;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code settings}: both risks of a bypass valve over its opening pressure. */
@Command(name = "settings", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class SettingsCommand implements Callable<Integer> {
    /** How settings can be written. */
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

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "settings.candidate")
    private String candidate;

    @Option(names = "--from", paramLabel = "PRESSURE", descriptionKey = "settings.from", defaultValue = "40 kPa")
    private String from;

    @Option(names = "--to", paramLabel = "PRESSURE", descriptionKey = "settings.to", defaultValue = "220 kPa")
    private String to;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "settings.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    SettingsCommand(CaseService service, Console console) {
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
        SettingsResult result = service.settings(opened, Optional.ofNullable(candidate), low, high);
        console.result(
                switch (format) {
                    case TEXT -> SettingsText.of(result, units);
                    case JSON -> SettingsJson.of(result);
                    case CSV -> SettingsCsv.of(result, units);
                });
        if (plots != null) {
            Pictures.ofSettings(result, plots, console);
        }
        if (!result.isAnswered()) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.unresolved"));
        }
        return ExitCode.DONE;
    }
}
