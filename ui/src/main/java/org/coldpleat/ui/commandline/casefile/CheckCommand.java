package org.coldpleat.ui.commandline.casefile;

import java.util.concurrent.Callable;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code check}: reads a case file and says what is wrong with it. Here the problems are the result. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class CheckCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    public CheckCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        Opening opening = service.open(caseFile.file());
        opening.problems().forEach(problem -> console.result(caseFile.line(problem) + "\n"));
        if (opening.opened().isEmpty()) {
            throw new Stop(
                    ExitCode.BAD_INPUT,
                    Texts.get(
                            "error.badCase", caseFile.file(), opening.problems().size()));
        }
        OpenedCase opened = opening.opened().orElseThrow();
        console.result(Texts.get(
                        "check.good",
                        caseFile.file(),
                        opened.candidates().size(),
                        opened.states().size())
                + "\n");
        console.result(CheckText.of(opened));
        return ExitCode.DONE;
    }
}
