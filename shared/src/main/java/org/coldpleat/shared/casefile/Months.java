package org.coldpleat.shared.casefile;

import java.util.List;

/** The months as a case file spells them. */
public final class Months {
    /** January first. */
    public static final List<String> NAMES = List.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");

    private Months() {}
}
