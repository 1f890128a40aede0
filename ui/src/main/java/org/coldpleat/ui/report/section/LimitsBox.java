package org.coldpleat.ui.report.section;

import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;

/** What no result of the program can tell, whatever the case. */
public final class LimitsBox {
    /** Name of the box in the document. */
    public static final String ID = "limits";

    private static final List<String> LIMITS =
            List.of("limits.efficiency", "limits.wear", "limits.burst", "limits.start", "limits.model");

    private LimitsBox() {}

    /** Heading and sentences. */
    public static List<String> words() {
        return Stream.concat(Stream.of("limits.title"), LIMITS.stream())
                .map(ReportTexts::get)
                .toList();
    }

    static Element of() {
        Element box = Tags.of("aside", ID).id(ID);
        box.appendChild(Tags.text("h3", "", ReportTexts.get("limits.title")));
        Element list = Tags.of("ul", "");
        LIMITS.forEach(key -> list.appendChild(Tags.text("li", "", ReportTexts.get(key))));
        return box.appendChild(list);
    }
}
