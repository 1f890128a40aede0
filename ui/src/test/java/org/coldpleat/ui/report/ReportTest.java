package org.coldpleat.ui.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.section.Amounts;
import org.coldpleat.ui.report.section.LimitsBox;
import org.coldpleat.ui.report.section.SentenceFold;
import org.coldpleat.ui.report.section.Tags;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.Opening;
import org.coldpleat.ui.text.ProgramVersion;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The report says everything with band and origin, needs nothing from outside, and no text of a case harms it. */
class ReportTest {
    private static ReportInput input;
    private static String html;
    private static Document document;

    @BeforeAll
    static void write() {
        input = ReportCases.input("half-the-area");
        html = Report.html(input);
        document = Jsoup.parse(html);
    }

    /** Beside the others, since the report takes seconds to be worked out. */
    @Nested
    class InBrowser extends ReportInBrowser {
        @Override
        String html() {
            return html;
        }
    }

    @Test
    void sameInputGivesTheSameBytes() {
        assertEquals(html, Report.html(input));
    }

    @Test
    void verdictComesFirstThenChartsThenSheets() {
        List<String> ids = document.select("section[id]").eachAttr("id");
        assertTrue(ids.indexOf("verdict") == 0 && ids.indexOf("charts") < ids.indexOf("sheets"), ids.toString());
        assertTrue(document.selectFirst(".lead").text().length() > 20);
    }

    @Test
    void noNumberStandsBare() {
        assertEquals(List.of(), bareNumbers(document));
    }

    @Test
    void aBareNumberWouldBeFound() {
        Document spoiled = document.clone();
        spoiled.selectFirst("#sheets").appendElement("p").text("about 12 kPa");
        assertEquals(List.of("about 12 kPa"), bareNumbers(spoiled));
        Document noOrigin = document.clone();
        noOrigin.selectFirst("#sheets .amount .origin").text("");
        assertFalse(bareNumbers(noOrigin).isEmpty());
    }

    private static final Pattern DIGIT = Pattern.compile("[0-9]");
    private static final Pattern BAND =
            Pattern.compile("±|\\bto\\b|no band|no spread|no closed band|exact|taken as given|chance|95 %|no answer");

    /** Texts with a number that is neither quoted nor in an amount with band and origin nor in a sentence with an origin. */
    private static List<String> bareNumbers(Document report) {
        List<String> bare = new ArrayList<>();
        report.body().traverse((node, depth) -> {
            if (node instanceof TextNode text
                    && DIGIT.matcher(text.getWholeText()).find()
                    && !isDressed(text)) {
                bare.add(text.text());
            }
        });
        return bare;
    }

    private static boolean isDressed(Node text) {
        for (Node at = text.parent(); at instanceof Element element; at = at.parent()) {
            if (element.normalName().equals("svg") || element.hasClass(Tags.QUOTED)) {
                return true;
            }
            if (element.hasClass(Amounts.AMOUNT)) {
                return BAND.matcher(element.text()).find() && hasOrigin(element);
            }
            if (element.hasClass(SentenceFold.SENTENCE)) {
                return hasOrigin(element);
            }
            // words of the report itself, which speak of bands and limits, not of this case
            if (element.is("aside.limits, dd, caption, header > .hint")) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasOrigin(Element element) {
        Element origin = element.selectFirst(".origin");
        return origin != null && !origin.text().isBlank();
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        assertTrue(document.select("script, link, img, iframe, object, embed, form, base")
                .isEmpty());
        assertTrue(
                document.select("[src], [onload], [onclick], [style*=url(http]").isEmpty());
        String withoutNames =
                html.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xlink", "");
        assertFalse(withoutNames.contains("http:") || withoutNames.contains("https:"), "an address");
        assertFalse(html.contains("@import"));
    }

    @Test
    void boxOfLimitsNamesWhatCannotBeTold() {
        String box = document.selectFirst("#" + LimitsBox.ID).text();
        for (String word : List.of("Efficiency", "Wear", "Burst")) {
            assertTrue(box.contains(word), word);
        }
    }

    @Test
    void namesInsideTheDocumentAreUnique() {
        Set<String> seen = new HashSet<>();
        document.select("[id]").forEach(element -> assertTrue(seen.add(element.id()), element.id()));
    }

    @Test
    void everyOpeningTemperatureShareAndSheetNumberHasItsChainFoldedUnderIt() {
        int states = input.comparison().candidates().get(0).states().size();
        int candidates = input.comparison().candidates().size();
        int sharing = (int) input.comparison().candidates().stream()
                .flatMap(candidate -> candidate.states().stream())
                .filter(state ->
                        state.shares().stream().anyMatch(at -> at.share().value() > 0))
                .count();
        assertTrue(sharing > 0, "some oil goes round the medium");
        assertEquals(
                states * candidates + sharing,
                document.select(".glance details.chain").size());
        assertEquals(4 * candidates, document.select(".sheet details.chain").size());
        assertTrue(document.select("details[open]").isEmpty());
    }

    @Test
    void versionDigestAndSeedAreTold() {
        String identity = document.selectFirst(".identity").text();
        assertTrue(
                identity.contains(ProgramVersion.text())
                        && identity.contains(input.comparison().digest()),
                identity);
        assertTrue(identity.contains("seed of the draws 1"), identity);
    }

    @Test
    void htmlIsValid() throws IOException {
        assertEquals(List.of(), HtmlValidity.errors(html));
    }

    @Test
    void aFaultInTheHtmlWouldBeFound() throws IOException {
        assertFalse(HtmlValidity.errors(html.replaceFirst("<h2>", "<h2 id=\"charts\" colour=\"red\">"))
                .isEmpty());
    }

    /** Without its duty and its start, which take longest to be worked out. */
    @Test
    void hostileNamesAreTextAndNothingElse() throws IOException {
        hostileNamesAreText(Files.readString(ReportCases.demo("half-the-area"))
                .replaceAll("(?m)^(?:start|duty):.*\\R(?:(?:[ #].*)?\\R)*", ""));
    }

    @Test
    @Tag("nightly")
    void hostileNamesAreTextInAllParts() throws IOException {
        hostileNamesAreText(Files.readString(ReportCases.demo("half-the-area")));
    }

    private static void hostileNamesAreText(String friendly) throws IOException {
        String first = "<script>alert(1)</script>\\\"' onload=\\\"x &amp; <b>";
        String second = "\\u202Eevil\\u2066 \\u05D0\\u05D1\\u0007" + "x".repeat(60);
        String text = friendly.replaceFirst(
                        "(?m)^title:.*$",
                        Matcher.quoteReplacement("title: \"</title><script>alert(1)</script>" + "T".repeat(60) + "\""))
                .replace(
                        "- name: Full",
                        "- name: \"" + first + "\"\n    notes: \"</td><script>alert(2)</script>" + "N".repeat(500)
                                + "\"")
                .replace("- name: Half", "- name: \"" + second + "\"");
        CaseService service = CaseService.standard();
        Opening opening = service.openDraft(
                "hostile.yaml", CaseDraft.open("hostile.yaml", text).draft(), Optional.empty());
        assertTrue(opening.opened().isPresent(), opening.problems().toString());
        ReportInput hostile = ReportCases.input(opening.opened().get());
        String out = Report.html(hostile);
        Document parsed = Jsoup.parse(out);
        assertTrue(parsed.select("script, b[onload], [onload]").isEmpty());
        assertTrue(parsed.selectFirst("#sheets .sheet > h3").text().contains("<script>alert(1)</script>"));
        assertFalse(out.contains("\u202E") || out.contains("\u2066"), "marks that turn the direction");
        assertEquals(List.of(), HtmlValidity.errors(out));
        assertEquals(List.of(), bareNumbers(parsed));
        assertTrue(ReportPdf.of(hostile).length > 10_000);
    }

    @Test
    void pdfHasTextOfItsOwnFontAndTheBoxOfLimits() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(ReportPdf.of(input))) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.contains("What this cannot tell"), "box");
            assertTrue(text.contains("±") && text.contains("°C"), "signs");
            assertFalse(text.contains("#"), "a sign that the font lacks");
            assertNotNull(pdf.getPage(0));
        }
    }
}
