package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.EvidenceReport.Combined;
import org.coldpleat.model.certainty.measurement.EvidenceReport.Member;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.Texts;
import org.jsoup.nodes.Element;

/** What the tests of a candidate say, and where they disagree. */
final class EvidenceBlock {
    private final Amounts amounts;

    EvidenceBlock(Amounts amounts) {
        this.amounts = amounts;
    }

    /** The evidence of one candidate; empty if there is neither a test nor anything to combine. */
    Optional<Element> of(EvidenceReport report) {
        if (report.tests().isEmpty() && report.combined().isEmpty()) {
            return Optional.empty();
        }
        Element block = Tags.of("div", "evidence");
        block.appendChild(Tags.text("h4", "", ReportTexts.get("evidence.title")));
        report.tests().forEach(test -> block.appendChild(test(test)));
        report.combined().forEach(combined -> block.appendChild(combined(combined)));
        return Optional.of(block);
    }

    private static String label(String key, String code) {
        return Texts.getOr(key + code, code);
    }

    private Element test(TestReport test) {
        Element table = Tags.of("table", "");
        Element caption = Tags.text(
                "caption", "", label("test.", test.test()) + ": " + label("evidence.status.", test.status()) + ", ");
        caption.appendChild(Tags.quoted(ReportTexts.get("evidence.count", Integer.toString(test.count()))));
        table.appendChild(caption);
        Element body = Tags.of("tbody", "");
        test.values()
                .forEach(value -> body.appendChild(Tags.row(
                        Tags.text("span", "", label("evidence.value.", value.key())),
                        amounts.estimate(value.value()))));
        if (body.children().isEmpty()) {
            body.appendChild(Tags.row(Tags.text("span", "", ReportTexts.get("evidence.nothing"))));
        }
        Element block = Tags.of("div", "").appendChild(table.appendChild(body));
        if (!test.notices().isEmpty()) {
            block.appendChild(SentenceFold.list(
                    test.notices().stream().map(amounts::sentence).toList()));
        }
        return block;
    }

    private Element combined(Combined combined) {
        Element table = Tags.of("table", combined.conflict() ? "conflict" : "");
        Element caption = Tags.text(
                "caption",
                "",
                label("evidence.quantity.", combined.quantity()) + ", " + ReportTexts.get("evidence.together") + " ");
        caption.appendChild(value(combined, combined.median(), combined.lnSigma()));
        table.appendChild(caption);
        Element body = Tags.of("tbody", "");
        for (Member member : combined.members()) {
            Element name = Tags.text(
                    "span",
                    "",
                    combined.quantity().equals("mediumResistance")
                            ? Sentences.evidence(member.name())
                            : label("evidence.member.", member.name()));
            if (!member.label().isEmpty()) {
                name.appendText(" ").appendChild(Tags.said(member.label()));
            }
            Element weight =
                    amounts.words(Math.round(100 * member.weight()) + " %", ReportTexts.get("band.none"), "weight");
            body.appendChild(Tags.row(
                    name,
                    value(combined, member.median(), member.lnSigma()),
                    weight,
                    Tags.text("strong", "", member.apart() ? ReportTexts.get("evidence.apart") : "")));
        }
        Element block = Tags.of("div", "").appendChild(table.appendChild(body));
        if (combined.conflict()) {
            block.appendChild(Tags.text("p", "warning", ReportTexts.get("evidence.conflict")));
        }
        return block;
    }

    private Element value(Combined combined, double median, double lnSigma) {
        return amounts.estimate(Measured.factor(combined.kind(), median, lnSigma, Provenance.MEASURED));
    }
}
