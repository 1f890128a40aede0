package org.coldpleat.ui.report;

import java.util.Optional;
import org.jsoup.nodes.Element;

/** One part of the report; empty if the case has nothing for it. */
interface ReportSection {
    Optional<Element> of(ReportInput input, Amounts amounts);
}
