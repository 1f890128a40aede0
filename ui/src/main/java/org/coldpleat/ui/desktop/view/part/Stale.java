package org.coldpleat.ui.desktop.view.part;

import javafx.css.PseudoClass;
import javafx.scene.Node;

/**
 * The mark of what belongs to values before a change. Each part that looks different then is marked itself: a mark at the
 * root of the window would have the styles of all its parts worked out anew at every change.
 */
public final class Stale {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    private Stale() {}

    public static void mark(Node part, boolean stale) {
        part.pseudoClassStateChanged(STALE, stale);
    }

    public static boolean is(Node part) {
        return part.getPseudoClassStates().contains(STALE);
    }
}
