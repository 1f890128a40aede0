package org.coldpleat.model.sizing;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * What a filter is to do. Every target is asked for at one oil temperature and at every warmer one of the case, since a
 * start runs through them all.
 *
 * @param kind what is asked for
 * @param temperature coldest oil temperature at which it must hold [K]
 * @param state name of a state of the case
 * @param limit of the kinds that have one: share [1] or pressure [Pa]; NaN otherwise
 */
public record Target(Kind kind, double temperature, String state, double limit) {
    /** Kinds of targets. */
    public enum Kind {
        /** The bypass valve stays shut. */
        NEVER_OPEN,
        /** The bypass valve starts to open at just this temperature, and is shut in all warmer oil. */
        OPENS_BELOW,
        /** No more than a share of the oil goes round the medium. */
        SHARE_BELOW,
        /** The medium bears no more than a pressure. */
        ELEMENT_BELOW
    }

    public Target {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(state, "state");
        Require.positive("temperature", temperature, "K");
        if (hasLimit(kind) && !(limit > 0)) {
            throw new IllegalArgumentException("limit must be above 0, was " + limit);
        }
    }

    private static boolean hasLimit(Kind kind) {
        return kind == Kind.SHARE_BELOW || kind == Kind.ELEMENT_BELOW;
    }
}
