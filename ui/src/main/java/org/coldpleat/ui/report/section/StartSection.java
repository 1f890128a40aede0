package org.coldpleat.ui.report.section;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ColdStartCharts;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** The cold start of the case, if it has one. */
public final class StartSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        return input.coldStart().map(start -> section(start, amounts, input.units()));
    }

    /** All charts of a start, one line a kind. */
    static List<Picture> pictures(ColdStart start, UnitSystem units) {
        List<String> names =
                start.candidates().stream().map(ColdStartCandidate::name).toList();
        return List.of(
                Picture.of(ColdStartCharts.timeline(start, names, units), ColdStartCharts.timelineDescription(start)));
    }

    private static Element section(ColdStart start, Amounts amounts, UnitSystem units) {
        Element section = Tags.of("section", "").id("start");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("start.title")));
        Element intro =
                Tags.of("p", "").appendChild(Tags.said(start.schedule())).appendText(": ");
        intro.appendText(ReportTexts.get("start.from") + " ").appendChild(amounts.set(start.from(), Kind.TEMPERATURE));
        intro.appendText(", " + ReportTexts.get("start.ambient") + " ")
                .appendChild(amounts.set(start.ambient(), Kind.TEMPERATURE));
        section.appendChild(intro);
        Element body = Tags.of("tbody", "");
        for (ColdStartCandidate one : start.candidates()) {
            boolean answer = one.isComputed();
            body.appendChild(Tags.row(
                    Tags.said(one.name()),
                    answer && one.hasValve()
                            ? amounts.of(one.openSeconds(), Kind.DURATION)
                            : Tags.text("span", "", ReportTexts.get(answer ? "start.noValve" : "amount.noAnswer")),
                    answer ? amounts.of(one.unfilteredVolume(), Kind.VOLUME) : Tags.text("span", "", "")));
        }
        section.appendChild(Tags.of("table", "")
                .appendChild(Tags.text("caption", "", ReportTexts.get("start.caption")))
                .appendChild(Tags.head(
                        ReportTexts.get("column.candidate"),
                        ReportTexts.get("start.open"),
                        ReportTexts.get("start.unfiltered")))
                .appendChild(body));
        int number = 0;
        for (Picture picture : pictures(start, units)) {
            section.appendChild(Figure.of(picture, "start-" + ++number));
        }
        section.appendChild(SentenceFold.plain(start.verdicts(), amounts));
        return section.appendChild(BasisSection.notices(start.notices(), amounts));
    }
}
