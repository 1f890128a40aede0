package org.coldpleat.ui.desktop.viewmodel;

import java.util.HashSet;
import java.util.Set;

/** Which candidates the curves of a window leave out. What is worked out does not change by it. */
public final class ShownCandidates {
    private final Set<String> hidden = new HashSet<>();

    /** Shows a candidate that was left out, or leaves it out. */
    public void toggle(String candidate) {
        if (!hidden.remove(candidate)) {
            hidden.add(candidate);
        }
    }

    /** True if a candidate is shown. */
    public boolean isShown(String candidate) {
        return !hidden.contains(candidate);
    }

    /** Names of the candidates that are left out. */
    public Set<String> hidden() {
        return Set.copyOf(hidden);
    }

    /** Shows all of them again. */
    public void all() {
        hidden.clear();
    }
}
