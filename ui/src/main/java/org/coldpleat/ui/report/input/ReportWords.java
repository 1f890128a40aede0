package org.coldpleat.ui.report.input;

import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.UnitSystem;

/** Words that the report shares with the command line, so that both say the same with the same digits. */
public interface ReportWords {
    /** The name of something by its key; the alternative if there is none. */
    String label(String key, String otherwise);

    /** At which oil temperatures a valve is open. */
    String answer(StateResult result, Comparison comparison, UnitSystem units);

    /** A version of the program. */
    String version();
}
