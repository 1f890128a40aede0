package org.coldpleat.ui.service;

import java.util.List;
import java.util.Objects;

/** A case that was read and resolved without problems. Immutable; hand it back to {@link CaseService} to run it. */
public final class OpenedCase {
    private final String title;
    private final boolean invented;
    private final List<String> candidates;
    private final List<String> states;
    private final Runs runs;

    OpenedCase(String title, boolean invented, List<String> candidates, List<String> states, Runs runs) {
        this.title = Objects.requireNonNull(title, "title");
        this.invented = invented;
        this.candidates = List.copyOf(candidates);
        this.states = List.copyOf(states);
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

    Runs runs() {
        return runs;
    }
}
