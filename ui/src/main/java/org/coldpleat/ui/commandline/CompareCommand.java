package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.StateResult.Answer;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code compare}: all candidates side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class CompareCommand implements Callable<Integer> {
    /** How a comparison can be written. */
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

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "compare.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    CompareCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OpenedCase opened = caseFile.open(service, console);
        Comparison comparison = service.compare(opened);
        console.result(
                switch (format) {
                    case TEXT -> CompareText.of(comparison, units);
                    case JSON -> CompareJson.of(comparison);
                    case CSV -> CompareCsv.of(comparison, units);
                });
        if (plots != null) {
            Pictures.ofComparison(comparison, plots, console);
        }
        boolean unresolved = comparison.candidates().stream()
                .flatMap(candidate -> candidate.states().stream())
                .anyMatch(state -> state.answer() == Answer.UNRESOLVED);
        if (unresolved) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.unresolved"));
        }
        return ExitCode.DONE;
    }
}
