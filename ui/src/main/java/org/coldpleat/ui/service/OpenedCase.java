package org.coldpleat.ui.service;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/** A case that was read and resolved without problems. Immutable; hand it back to {@link CaseService} to run it. */
public final class OpenedCase {
    private final String title;
    private final boolean invented;
    private final List<String> candidates;
    private final List<String> states;
    private final Map<String, Measured> understood;
    private final Runs runs;

    OpenedCase(
            String title,
            boolean invented,
            List<String> candidates,
            List<String> states,
            Map<String, Measured> understood,
            Runs runs) {
        this.title = Objects.requireNonNull(title, "title");
        this.invented = invented;
        this.candidates = List.copyOf(candidates);
        this.states = List.copyOf(states);
        this.understood = Collections.unmodifiableMap(new LinkedHashMap<>(understood));
        this.runs = Objects.requireNonNull(runs, "runs");
    }

    /** Title of the case. */
    public String title() {
        return title;
    }

    /** True if the case says its data are invented. */
    public boolean invented() {
        return invented;
    }

    /** Names of the candidates in the order of the case. */
    public List<String> candidates() {
        return candidates;
    }

    /** Names of the states in the order of the case, flow stand first. */
    public List<String> states() {
        return states;
    }

    /**
     * Every quantity that was understood, by its path, in the order of the file; with the usual spread of
     * its bench reading where none was written.
     */
    public Map<String, Measured> understood() {
        return understood;
    }

    /** The bench sheet of a candidate as written; empty if there is no such candidate or the case came from no file. */
    public Optional<Section> sheet(String candidate) {
        return runs.document()
                .flatMap(document -> document.root().sections("candidates").stream()
                        .filter(section -> section.text("name").orElse("").equals(candidate))
                        .findFirst());
    }

    /** The case as written; empty if it came from no file. */
    public Optional<CaseDocument> document() {
        return runs.document();
    }

    Runs runs() {
        return runs;
    }
}
