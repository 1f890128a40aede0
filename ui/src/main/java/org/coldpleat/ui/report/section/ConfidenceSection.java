package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.ui.chart.ConfidenceCharts;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.chart.style.NamedChart;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.service.Sentences;
import org.jsoup.nodes.Element;

/** How sure the answers are, from draws; says so if it was left out. */
public final class ConfidenceSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "").id("confidence");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("confidence.title")));
        if (input.confidence().isEmpty()) {
            return Optional.of(section.appendChild(Tags.text("p", "", ReportTexts.get("confidence.leftOut"))));
        }
        ConfidenceResult result = input.confidence().get();
        Element intro = Tags.text("p", "", ReportTexts.get("confidence.intro") + " ");
        section.appendChild(intro.appendChild(Tags.quoted(
                ReportTexts.get("confidence.draws", Integer.toString(result.draws()), Long.toString(result.seed())))));
        section.appendChild(outcomes(result, amounts));
        section.appendChild(focus(result.focus(), amounts));
        int number = 0;
        for (NamedChart one :
                ConfidenceCharts.all(result, input.comparison().invented(), Sentences::measuredThing, input.units())) {
            section.appendChild(Figure.of(Picture.of(one.chart(), one.description()), "confidence-" + ++number));
        }
        return Optional.of(section);
    }

    private static Element outcomes(ConfidenceResult result, Amounts amounts) {
        Element body = Tags.of("tbody", "");
        for (ConfidenceResult.StateOutcome one : result.outcomes()) {
            body.appendChild(Tags.row(
                    Tags.said(one.state()),
                    Tags.said(one.candidate()),
                    amounts.of(one.opening(), Kind.TEMPERATURE),
                    chance(one.chanceOpen(), result.draws(), amounts)));
        }
        return Tags.of("table", "")
                .appendChild(Tags.text("caption", "", ReportTexts.get("confidence.outcomes")))
                .appendChild(Tags.head(
                        ReportTexts.get("column.state"),
                        ReportTexts.get("column.candidate"),
                        ReportTexts.get("amount.opens"),
                        ReportTexts.get("column.chance")))
                .appendChild(body);
    }

    /** A share of the draws with the sampling error of a binomial count. */
    private static Element chance(double share, int draws, Amounts amounts) {
        return amounts.share(new Band(share, Math.sqrt(share * (1 - share) / draws)));
    }

    private static Element focus(ConfidenceResult.Focus focus, Amounts amounts) {
        Element body = Tags.of("tbody", "");
        focus.measurements().stream()
                .limit(6)
                .forEach(one -> body.appendChild(Tags.row(
                        Tags.text("span", "", Sentences.measurement(one.group().replaceAll("#.*", ""))),
                        amounts.unbanded(one.spreadNow(), Kind.TEMPERATURE_DIFFERENCE),
                        amounts.of(new Band(one.spreadAfter(), one.error()), Kind.TEMPERATURE_DIFFERENCE))));
        Element caption = Tags.text("caption", "", ReportTexts.get("confidence.focus") + " ");
        caption.appendChild(Tags.said(focus.candidate())).appendText(", ").appendChild(Tags.said(focus.state()));
        return Tags.of("table", "")
                .appendChild(caption)
                .appendChild(Tags.head(
                        ReportTexts.get("column.measurement"),
                        ReportTexts.get("column.now"),
                        ReportTexts.get("column.after")))
                .appendChild(body);
    }
}
