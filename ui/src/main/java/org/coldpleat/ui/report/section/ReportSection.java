package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** One part of the report; empty if the case has nothing for it. */
public interface ReportSection {
    Optional<Element> of(ReportInput input, Amounts amounts);
}
