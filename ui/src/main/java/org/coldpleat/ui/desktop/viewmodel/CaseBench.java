package org.coldpleat.ui.desktop.viewmodel;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.service.Problem;

/**
 * A case on the bench: the draft that is being written, what was understood of it, and every step back. Nothing that is
 * typed is refused: what is not understood stands in the draft with its problem, and the case that was last understood
 * stays at hand.
 */
public final class CaseBench {
    private static final String CANDIDATES = "candidates";
    private static final String DEMO = "/demo-cases/ridge-hut-generator/case.yaml";

    private final CaseService service;
    private final Deque<CaseDraft> before = new ArrayDeque<>();
    private final Deque<CaseDraft> after = new ArrayDeque<>();
    private final List<Problem> setAside;
    private Optional<Path> file;
    private CaseDraft draft;
    private String saved;
    private Opening opening;
    private Optional<OpenedCase> good = Optional.empty();

    private CaseBench(CaseService service, Optional<Path> file, String text, String saved) {
        this.service = service;
        this.file = file;
        this.saved = saved;
        CaseDraft.Opened opened = CaseDraft.open(name(), text);
        setAside = opened.setAside().stream().map(Problem::of).toList();
        take(opened.draft());
    }

    /** A case of which nothing is known yet. */
    public static CaseBench blank(CaseService service) {
        String text = CaseDraft.blank().text();
        return new CaseBench(service, Optional.empty(), text, text);
    }

    /**
     * A demo case that comes with the program; it belongs to no file.
     *
     * @throws IOException if the program lacks it
     */
    public static CaseBench demo(CaseService service) throws IOException {
        try (InputStream in = CaseBench.class.getResourceAsStream(DEMO)) {
            if (in == null) {
                throw new FileNotFoundException(DEMO);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new CaseBench(service, Optional.empty(), text, text);
        }
    }

    /**
     * Opens a file. One that was broken by hand opens too, with the lines that are no YAML turned into remarks.
     *
     * @throws IOException if the file cannot be read as text
     */
    public static CaseBench open(CaseService service, Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        return new CaseBench(service, Optional.of(file), text, text);
    }

    /**
     * Takes up a text that was never saved.
     *
     * @param file the file it was going to be saved to; empty if it had none
     */
    public static CaseBench recovered(CaseService service, Optional<Path> file, String text) {
        String saved = "";
        try {
            saved = file.isPresent() ? Files.readString(file.get(), StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            // a file that cannot be read differs from what was recovered
        }
        return new CaseBench(service, file, text, saved);
    }

    private String name() {
        return file.map(Path::toString).orElse("");
    }

    /** The file; empty if it was never saved. */
    public Optional<Path> file() {
        return file;
    }

    /** The draft as it stands. */
    public CaseDraft draft() {
        return draft;
    }

    /** The case that was last understood; empty if it never was. */
    public Optional<OpenedCase> opened() {
        return good;
    }

    /** True if the draft as it stands is understood. */
    public boolean isUnderstood() {
        return opening.opened().isPresent();
    }

    /** What keeps the draft from being a case. */
    public List<Problem> problems() {
        return opening.problems();
    }

    /** What was wrong with lines that were turned into remarks when the file was opened. */
    public List<Problem> setAside() {
        return setAside;
    }

    /** True if the draft differs from the file. */
    public boolean isChanged() {
        return !draft.text().equals(saved);
    }

    /**
     * Writes the draft to a file, which is its file from then on.
     *
     * @throws IOException if that fails; the file is as it was then
     */
    public void save(Path to) throws IOException {
        CaseWriter.write(to, draft.text());
        saved = draft.text();
        if (!file.equals(Optional.of(to))) {
            file = Optional.of(to);
            opening = service.openDraft(name(), draft, good);
            good = opening.opened().or(() -> good);
        }
    }

    /** Lines of a sheet: of a candidate, {@code oil}, {@code engine} and so on; blank for the case itself. */
    public List<SheetRow> sheet(String path) {
        return Sheet.rows(draft, opening.problems(), path);
    }

    /**
     * What the lines of a sheet are understood as, and what they amount to; nothing while the draft is not understood.
     *
     * @param path as of {@link #sheet}
     */
    public SheetMeaning meaning(String path, UnitSystem units) {
        if (!isUnderstood() || opened().isEmpty()) {
            return SheetMeaning.NONE;
        }
        OpenedCase known = opened().get();
        Optional<String> candidate = path.startsWith(CANDIDATES) ? draft.value(path + ".name") : Optional.empty();
        Map<String, SheetMeaning.Derived> amounts = candidate
                .filter(known.candidates()::contains)
                .map(name -> SheetMeaning.amounts(path, known.present(name), units))
                .orElse(Map.of());
        return new SheetMeaning(known.understood(), amounts, units);
    }

    /** Names of all candidates, understood or not. */
    public List<String> candidates() {
        return draft.names(CANDIDATES);
    }

    /** Writes what was typed into a field; blank makes it unknown. False if nothing changed. */
    public boolean edit(String path, String typed) {
        return step(typed.isBlank() ? draft.clear(path) : draft.set(path, typed));
    }

    /** Makes several changes as one step. False if nothing changed. */
    public boolean change(UnaryOperator<CaseDraft> changes) {
        return step(changes.apply(draft));
    }

    /** Adds an empty entry to a list. */
    public void addEntry(String list) {
        step(draft.add(list));
    }

    /** Takes an entry, such as {@code oil.points[1]}, out of its list. */
    public void removeEntry(String entry) {
        step(draft.clear(entry));
    }

    /** Adds a candidate of which only the name is known, and gives its number. */
    public int addCandidate(String name) {
        step(draft.addCandidate(free(name)));
        return draft.count(CANDIDATES) - 1;
    }

    /** Adds a copy of a candidate, and gives its number. */
    public int copyCandidate(int number) {
        step(draft.copy(CANDIDATES, number, free(candidates().get(number))));
        return draft.count(CANDIDATES) - 1;
    }

    /** Adds a copy of a candidate with the values that were tried on it, and gives its number. */
    public int keep(int number, WhatIf tried) {
        CaseDraft copied = draft.copy(CANDIDATES, number, free(candidates().get(number)));
        step(tried.kept(copied, copied.count(CANDIDATES) - 1));
        return draft.count(CANDIDATES) - 1;
    }

    /** Takes a candidate out of the case. */
    public void removeCandidate(int number) {
        step(draft.remove(CANDIDATES, number));
    }

    /** Moves a candidate to another place among them. */
    public void moveCandidate(int from, int to) {
        step(draft.move(CANDIDATES, from, to));
    }

    private String free(String name) {
        String free = name;
        for (int i = 2; candidates().contains(free); i++) {
            free = name + " " + i;
        }
        return free;
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
        if (canUndo()) {
            after.push(draft);
            take(before.pop());
        }
    }

    /** Takes the last undone step again. */
    public void redo() {
        if (canRedo()) {
            before.push(draft);
            take(after.pop());
        }
    }

    private boolean step(CaseDraft next) {
        if (next.equals(draft)) {
            return false;
        }
        before.push(draft);
        after.clear();
        take(next);
        return true;
    }

    private void take(CaseDraft next) {
        draft = next;
        opening = service.openDraft(name(), next, good);
        good = opening.opened().or(() -> good);
    }
}
