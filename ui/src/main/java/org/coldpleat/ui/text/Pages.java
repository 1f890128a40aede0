package org.coldpleat.ui.text;

import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;

/** Texts that the window shows with the very words and digits of the command line. */
public final class Pages {
    /** Letters of the longest line of a text. */
    public static final int WIDTH = CompareText.WIDTH;

    private Pages() {}

    /** Version the program was built as. */
    public static String version() {
        return ProgramVersion.text();
    }

    /** The whole comparison as {@code compare} prints it. */
    public static String comparison(Comparison comparison, UnitSystem units) {
        return CompareText.of(comparison, units);
    }

    /** At which oil temperatures a valve is open. */
    public static String answer(StateResult result, Comparison comparison, UnitSystem units) {
        return OpeningAnswer.of(result, comparison.from(), comparison.to(), ShownUnits.of(units));
    }

    /** A notice with its place. */
    public static String notice(Notice notice, UnitSystem units) {
        return NoticeLines.of(notice, units);
    }

    /** An oil temperature with its unit. */
    public static String temperature(double kelvin, UnitSystem units) {
        ShownUnit unit = ShownUnits.of(units).temperature();
        return Figures.fixed(unit.of(kelvin), 1) + " " + unit.symbol();
    }
}
