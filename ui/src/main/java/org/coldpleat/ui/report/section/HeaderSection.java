package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.text.ProgramVersion;
import org.jsoup.nodes.Element;

/** Title, story, and what marks this run. */
public final class HeaderSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Comparison comparison = input.comparison();
        Element header = Tags.of("header", "");
        header.appendChild(Tags.of("h1", "").appendChild(Tags.said(comparison.title())));
        if (comparison.invented()) {
            header.appendChild(Tags.text("p", "invented", ReportTexts.get("header.invented")));
        }
        Optional.ofNullable(input.said().get("story"))
                .ifPresent(story -> header.appendChild(Tags.of("p", "story").appendChild(Tags.said(story))));
        Element range = Tags.text("p", "", ReportTexts.get("header.range") + " ");
        range.appendChild(amounts.set(comparison.from(), Kind.TEMPERATURE));
        range.appendText(" " + ReportTexts.get("header.to") + " ");
        range.appendChild(amounts.set(comparison.to(), Kind.TEMPERATURE));
        return Optional.of(
                Tags.add(header, range, identity(input), Tags.text("p", "hint", ReportTexts.get("header.bands"))));
    }

    /** Version, digest and seed. */
    private static Element identity(ReportInput input) {
        Element line = Tags.text("p", "identity", ReportTexts.get("header.version") + " ");
        line.appendChild(Tags.quoted(ProgramVersion.text()));
        line.appendText("; " + ReportTexts.get("header.digest") + " ")
                .appendChild(Tags.quoted(
                        ReportTexts.get("header.sha", input.comparison().digest())));
        line.appendText("; ");
        input.confidence()
                .ifPresentOrElse(
                        drawn -> line.appendText(ReportTexts.get("header.seed") + " ")
                                .appendChild(Tags.quoted(Long.toString(drawn.seed()))),
                        () -> line.appendText(ReportTexts.get("header.noSeed")));
        return line;
    }
}
