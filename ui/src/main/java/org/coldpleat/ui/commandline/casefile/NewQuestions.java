package org.coldpleat.ui.commandline.casefile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.text.Texts;

/** Asks for a case: ten questions at most, each of which may be left open. */
final class NewQuestions {
    private static final String FILTER = "candidates[0].";

    /** Fields to ask for, and the keys of the words to ask with. */
    private static final List<String[]> QUESTIONS = List.of(
            new String[] {"oil.grade", "new.ask.oil"},
            new String[] {"engine.kind", "new.ask.kind"},
            new String[] {"engine.displacement", "new.ask.displacement"},
            new String[] {"engine.fuel", "new.ask.fuel"},
            new String[] {FILTER + "name", "new.ask.name"},
            new String[] {FILTER + "pleats.count", "new.ask.count"},
            new String[] {FILTER + "pleats.depth", "new.ask.depth"},
            new String[] {FILTER + "pleats.height", "new.ask.height"},
            new String[] {FILTER + "medium.family", "new.ask.family"},
            new String[] {FILTER + "bypass.openingPressure", "new.ask.opening"});

    private final Console console;
    private final BufferedReader answers;

    NewQuestions(Console console, BufferedReader answers) {
        this.console = console;
        this.answers = answers;
    }

    /** A draft with the answers in it. When no more answers come, what is left stays open. */
    CaseDraft asked(CaseDraft blank) {
        console.message(Texts.get("new.ask.head", QUESTIONS.size()));
        CaseDraft draft = blank;
        for (int i = 0; i < QUESTIONS.size(); i++) {
            String path = QUESTIONS.get(i)[0];
            String question = Texts.get("new.ask", i + 1, Texts.get(QUESTIONS.get(i)[1], choices(path)));
            Optional<CaseDraft> told = answer(draft, path, question);
            while (told.isEmpty()) {
                told = answer(draft, path, question);
            }
            draft = told.get();
        }
        return draft;
    }

    /** The draft with the next answer; empty if it was not understood. */
    private Optional<CaseDraft> answer(CaseDraft draft, String path, String question) {
        console.err().print(question);
        console.err().flush();
        String typed = next().strip();
        if (typed.isEmpty()) {
            return Optional.of(draft);
        }
        CaseDraft told = draft.set(path, typed);
        Optional<CaseProblem> problem = CaseReader.read("", told.text()).problems().stream()
                .filter(one -> one.field().equals(path))
                .findFirst();
        problem.ifPresent(one -> console.message(one.sentence()));
        return problem.isPresent() ? Optional.empty() : Optional.of(told);
    }

    private String next() {
        try {
            String line = answers.readLine();
            return line == null ? "" : line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words that a field can hold, as the file has them; nothing for others. */
    private static String choices(String path) {
        Field field = FieldCatalog.root();
        for (String key : path.replaceAll("\\[\\d+]", "").split("\\.", -1)) {
            field = field.field(key);
        }
        return String.join(", ", field.choices());
    }
}
