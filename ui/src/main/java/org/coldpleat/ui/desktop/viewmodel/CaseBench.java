package org.coldpleat.ui.desktop.viewmodel;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.service.Problem;

/**
 * A case on the bench: its text, what was understood of it, and every step back. A value is changed in the text where it
 * stands, so that remarks and order of the file stay. A value that is not understood keeps the last good case.
 */
public final class CaseBench {
    /** What was typed into a field and not understood. */
    private record Refused(String path, String text, String problem) {}

    private static final Pattern STEP = Pattern.compile("(\\w+)(?:\\[(\\d+)])?");

    private final CaseService service;
    private final String name;
    private final Deque<String> before = new ArrayDeque<>();
    private final Deque<String> after = new ArrayDeque<>();
    private String text;
    private String saved;
    private Opening opening;
    private Optional<OpenedCase> good;
    private Optional<Refused> refused = Optional.empty();

    /**
     * @param name of the file, for messages
     * @param text of the file, YAML
     */
    public CaseBench(CaseService service, String name, String text) {
        this.service = service;
        this.name = name;
        this.text = text;
        saved = text;
        opening = service.openText(name, text);
        good = opening.opened();
    }

    /** The case that was last understood; empty if it never was. */
    public Optional<OpenedCase> opened() {
        return good;
    }

    /** What keeps the text from being a case. */
    public List<Problem> problems() {
        return opening.problems();
    }

    /** The text as it would be saved. */
    public String text() {
        return text;
    }

    /** True if the text differs from the file. */
    public boolean isChanged() {
        return !text.equals(saved);
    }

    /** Says that the text was written to the file. */
    public void markSaved() {
        saved = text;
    }

    /** Quantities of a candidate in the order of its sheet. */
    public List<SheetField> fields(String candidate) {
        List<SheetField> fields = new ArrayList<>();
        good.flatMap(OpenedCase::document).ifPresent(document -> {
            String head = good.orElseThrow()
                    .sheet(candidate)
                    .map(sheet -> sheet.path() + ".")
                    .orElse("?");
            document.quantities().forEach((path, measured) -> {
                if (path.startsWith(head)
                        && place(document, path, measured.written()).isPresent()) {
                    Optional<Refused> own = refused.filter(one -> one.path().equals(path));
                    fields.add(new SheetField(
                            path,
                            words(path.substring(head.length())),
                            own.map(Refused::text).orElse(measured.written()),
                            own.map(Refused::problem).orElse("")));
                }
            });
        });
        return fields;
    }

    /**
     * Writes a value into the text. One that is not understood changes nothing but is kept with its problem.
     *
     * @return true if the case changed
     */
    public boolean edit(String path, String typed) {
        refused = Optional.empty();
        OpenedCase current = good.orElseThrow(() -> new IllegalArgumentException("no case is open"));
        CaseDocument document = current.document().orElseThrow();
        String written = document.quantities().get(path).written();
        if (typed.strip().equals(written)) {
            return false;
        }
        int[] place = place(document, path, written)
                .orElseThrow(() -> new IllegalArgumentException(path + " has no place in the text"));
        String edited = text.substring(0, place[0]) + typed.strip() + text.substring(place[1]);
        Opening tried = service.openText(name, edited);
        boolean stillThere = tried.opened()
                .flatMap(OpenedCase::document)
                .map(found -> found.quantities().containsKey(path)
                        && found.quantities().size() == document.quantities().size())
                .orElse(false);
        if (!stillThere) {
            String problem = tried.problems().stream()
                    .filter(one -> one.path().contains(path) || path.contains(one.path()))
                    .findFirst()
                    .or(() -> tried.problems().stream().findFirst())
                    .map(Problem::text)
                    .orElse(typed);
            refused = Optional.of(new Refused(path, typed, problem));
            return false;
        }
        before.push(text);
        after.clear();
        take(edited, tried);
        return true;
    }

    /** True if there is a step to take back. */
    public boolean canUndo() {
        return !before.isEmpty();
    }

    /** True if there is a step to take again. */
    public boolean canRedo() {
        return !after.isEmpty();
    }

    /** Takes back the last step, without limit. */
    public void undo() {
        move(before, after);
    }

    /** Takes the last undone step again. */
    public void redo() {
        move(after, before);
    }

    private void move(Deque<String> from, Deque<String> to) {
        if (!from.isEmpty()) {
            to.push(text);
            String moved = from.pop();
            take(moved, service.openText(name, moved));
        }
    }

    private void take(String newText, Opening newOpening) {
        text = newText;
        opening = newOpening;
        good = newOpening.opened().or(() -> good);
        refused = Optional.empty();
    }

    /** Where the text of a value begins and ends; empty if it does not stand behind its key on its line. */
    private Optional<int[]> place(CaseDocument document, String path, String written) {
        int cut = path.lastIndexOf('.');
        if (cut < 0 || written.isBlank()) {
            return Optional.empty();
        }
        Optional<Section> section = section(document, path.substring(0, cut));
        String key = path.substring(cut + 1);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        int start = 0;
        for (int line = 1; line < section.get().lineOf(key); line++) {
            start = text.indexOf('\n', start) + 1;
        }
        int end = text.indexOf('\n', start);
        String line = text.substring(start, end < 0 ? text.length() : end);
        Matcher at = Pattern.compile("\\b" + key + "\\s*:\\s*(" + Pattern.quote(written) + ")\\s*(?=[,}#\\n]|$)")
                .matcher(line);
        if (!at.find()) {
            return Optional.empty();
        }
        int[] found = {start + at.start(1), start + at.end(1)};
        return at.find() ? Optional.empty() : Optional.of(found);
    }

    private static Optional<Section> section(CaseDocument document, String path) {
        Section at = document.root();
        for (String step : path.split("\\.", -1)) {
            Matcher parts = STEP.matcher(step);
            if (!parts.matches()) {
                return Optional.empty();
            }
            if (parts.group(2) != null) {
                at = at.sections(parts.group(1)).get(Integer.parseInt(parts.group(2)));
            } else {
                Optional<Section> below = at.section(parts.group(1));
                if (below.isEmpty()) {
                    return Optional.empty();
                }
                at = below.get();
            }
        }
        return Optional.of(at);
    }

    /** A path as words: {@code basePlate.inletHoles.count} is "base plate, inlet holes, count". */
    static String words(String path) {
        return FieldWords.of(path);
    }
}
