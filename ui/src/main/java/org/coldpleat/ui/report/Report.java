package org.coldpleat.ui.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.section.Amounts;
import org.coldpleat.ui.report.section.BasisSection;
import org.coldpleat.ui.report.section.ChartSection;
import org.coldpleat.ui.report.section.ConfidenceSection;
import org.coldpleat.ui.report.section.HeaderSection;
import org.coldpleat.ui.report.section.LimitsBox;
import org.coldpleat.ui.report.section.PleatSection;
import org.coldpleat.ui.report.section.ReportSection;
import org.coldpleat.ui.report.section.ServiceSection;
import org.coldpleat.ui.report.section.SettingsSection;
import org.coldpleat.ui.report.section.SheetSection;
import org.coldpleat.ui.report.section.StartSection;
import org.coldpleat.ui.report.section.Tags;
import org.coldpleat.ui.report.section.VerdictSection;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.DocumentType;
import org.jsoup.nodes.Element;

/** Writes the report of a case as one HTML document that needs nothing else. The same input gives the same bytes. */
public final class Report {
    /** Parts in the order of reading. */
    private static final List<ReportSection> SECTIONS = List.of(
            new HeaderSection(),
            new VerdictSection(),
            new ChartSection(),
            new SheetSection(),
            new ConfidenceSection(),
            new StartSection(),
            new SettingsSection(),
            new PleatSection(),
            new ServiceSection(),
            new BasisSection());

    private Report() {}

    /** What no result of the program can tell: heading first, then one sentence each. */
    public static List<String> limits() {
        return LimitsBox.words();
    }

    /** The report as HTML. */
    public static String html(ReportInput input) {
        return document(input).outerHtml() + "\n";
    }

    static Document document(ReportInput input) {
        Document document = new Document("");
        document.outputSettings().prettyPrint(false).charset(StandardCharsets.UTF_8);
        document.appendChild(new DocumentType("html", "", ""));
        Element html = Tags.of("html", "").attr("lang", "en");
        Element head = Tags.of("head", "");
        head.appendChild(Tags.of("meta", "").attr("charset", "utf-8"));
        head.appendChild(Tags.text("title", "", input.comparison().title()));
        head.appendChild(Tags.of("meta", "").attr("name", "viewport").attr("content", "width=device-width"));
        head.appendChild(Tags.of("style", "").appendChild(new DataNode(style())));
        Element body = Tags.of("body", "");
        Amounts amounts = new Amounts(input.units());
        SECTIONS.forEach(section -> section.of(input, amounts).ifPresent(body::appendChild));
        document.appendChild(html.appendChild(head).appendChild(body));
        return document;
    }

    private static String style() {
        try (InputStream in = Report.class.getResourceAsStream("report.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
