package org.coldpleat.ui.commandline.compare;

import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.StateResult.Answer;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.ui.commandline.argument.CandidatesArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code compare}: all candidates side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class CompareCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CandidatesArgument candidates;

    @Mixin
    private OutputArguments output;

    public CompareCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OpenedCase opened = candidates.open(service, console);
        Comparison comparison = opened.compare().now();
        console.result(
                switch (output.format()) {
                    case TEXT -> CompareText.of(comparison, output.units());
                    case JSON -> CompareJson.of(comparison);
                    case CSV -> CompareCsv.of(comparison, output.units());
                });
        output.plots().ifPresent(folder -> Pictures.ofComparison(comparison, output.units(), folder, console));
        boolean unresolved = comparison.candidates().stream()
                .flatMap(candidate -> candidate.states().stream())
                .anyMatch(state -> state.answer() == Answer.UNRESOLVED);
        if (unresolved) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.unresolved"));
        }
        return ExitCode.DONE;
    }
}
