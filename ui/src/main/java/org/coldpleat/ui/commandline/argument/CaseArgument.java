package org.coldpleat.ui.commandline.argument;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.NearestWord;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.service.Problem;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Parameters;

/** The case file every command works on, and the names in it. */
public final class CaseArgument {
    @Parameters(paramLabel = "CASE", descriptionKey = "case")
    private Path file;

    public Path file() {
        return file;
    }

    /** Opens the case, or stops with its problems on standard error. */
    public OpenedCase open(CaseService service, Console console) {
        return opened(service.open(file), console);
    }

    /** What an opening gave, or stops with its problems on standard error. */
    OpenedCase opened(Opening opening, Console console) {
        for (Problem problem : opening.problems()) {
            console.message(line(problem));
        }
        return opening.opened()
                .orElseThrow(() -> new Stop(
                        ExitCode.BAD_INPUT,
                        Texts.get("error.badCase", file, opening.problems().size())));
    }

    /** The case as a text that can be changed; it was opened before. */
    public CaseDraft draft() {
        try {
            return CaseDraft.open(file.toString(), Files.readString(file, StandardCharsets.UTF_8))
                    .draft();
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.internal", e));
        }
    }

    /** A problem as {@code file:line: path: text}, so that an editor can jump to it. */
    public String line(Problem problem) {
        String place = problem.line() > 0 ? file + ":" + problem.line() : file.toString();
        return problem.path().isEmpty()
                ? Texts.get("problem.file", place, problem.text())
                : Texts.get("problem.field", place, problem.path(), problem.text());
    }

    public static void requireCandidate(OpenedCase opened, String candidate) {
        requireName("error.candidate", candidate, opened.candidates());
    }

    public static void requireState(OpenedCase opened, String state) {
        requireName("error.state", state, opened.states());
    }

    public static void requireSchedule(List<String> schedules, String schedule) {
        requireName("error.schedule", schedule, schedules);
    }

    public static void requireEngineState(List<String> states, String state) {
        requireName("error.state", state, states);
    }

    public static void requireQuantity(List<String> explainable, String quantity) {
        requireName("error.quantity", quantity, explainable);
    }

    private static void requireName(String key, String written, List<String> known) {
        if (known.contains(written)) {
            return;
        }
        Optional<String> nearest = NearestWord.to(written, known);
        String hint = nearest.map(name -> Texts.get("error.nearest", name))
                .orElseGet(() -> Texts.get("error.known", String.join(", ", known)));
        throw new Stop(ExitCode.USAGE, Texts.get(key, written, hint));
    }
}
