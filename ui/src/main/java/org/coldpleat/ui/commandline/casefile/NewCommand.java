package org.coldpleat.ui.commandline.casefile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.ui.commandline.argument.EngineArguments;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: writes a case with comments, from options or by asking. */
@Command(name = "new", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class NewCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;
    private final Supplier<BufferedReader> answers;

    @Parameters(paramLabel = "CASE", descriptionKey = "new.out")
    private Path out;

    @Option(names = "--oil", paramLabel = "GRADE", descriptionKey = "new.oil")
    private String oil;

    @Option(names = "--engine", paramLabel = "KIND", descriptionKey = "new.engine")
    private String kind;

    @Mixin
    private EngineArguments engine;

    @Option(names = "--filter", paramLabel = "WORDS", descriptionKey = "new.filter")
    private List<String> filters = List.of();

    @Option(names = "--force", descriptionKey = "new.force")
    private boolean force;

    /** @param answers what is typed in answer to questions; asked for only if there are any */
    NewCommand(CaseService service, Console console, Supplier<BufferedReader> answers) {
        this.service = service;
        this.console = console;
        this.answers = answers;
    }

    /** The command with answers from standard input, typed or piped, in the encoding of the system. */
    public static NewCommand of(CaseService service, Console console) {
        Charset encoding = Charset.forName(System.getProperty("native.encoding"));
        return new NewCommand(service, console, () -> new BufferedReader(new InputStreamReader(System.in, encoding)));
    }

    @Override
    public Integer call() {
        if (Files.exists(out) && !force) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("new.isThere", out));
        }
        boolean told = oil != null || kind != null || engine.areGiven() || !filters.isEmpty();
        CaseDraft draft =
                told ? told(NewCase.blank()) : new NewQuestions(console, answers.get()).asked(NewCase.blank());
        NewCase.Completed completed = NewCase.complete(draft);
        Opening opening = service.openDraft(out.toString(), completed.draft(), Optional.empty());
        opening.problems().forEach(one -> console.message(Texts.get("problem.file", one.path(), one.text())));
        if (opening.opened().isEmpty()) {
            throw new Stop(
                    ExitCode.BAD_INPUT, Texts.get("new.bad", opening.problems().size(), out));
        }
        try {
            CaseWriter.write(out, completed.draft().text());
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("new.notWritten", out, e));
        }
        console.message(Texts.get("plots.written", out));
        completed.notes().ifPresent(console::message);
        console.message(Texts.get("new.next", out));
        return ExitCode.DONE;
    }

    private CaseDraft told(CaseDraft blank) {
        CaseDraft draft = engine.into(blank);
        draft = oil == null ? draft : draft.set("oil.grade", oil);
        draft = kind == null ? draft : draft.set("engine.kind", kind);
        for (int i = 0; i < filters.size(); i++) {
            draft = FilterWords.into(draft, i, filters.get(i));
        }
        return draft;
    }
}
