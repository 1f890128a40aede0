package org.coldpleat.ui.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as a reader sees it: in a browser, on a phone, on paper. */
abstract class ReportInBrowser {
    /** Opens every fold and measures what is shown; put into a copy of the report, which itself has no script. */
    private static final String PROBE = """
            <pre id="probe"></pre><script>
            const out = [];
            for (const svg of document.querySelectorAll('svg')) {
              const box = svg.getBoundingClientRect();
              if (box.width < 200 || box.height < 130) { out.push('small chart ' + box.width + ' x ' + box.height); }
            }
            let folds = 0;
            for (const fold of document.querySelectorAll('details')) {
              fold.querySelector('summary').click();
              let up = fold;
              while ((up = up.parentElement) !== null) { if (up.tagName === 'DETAILS') { up.open = true; } }
              const inside = fold.lastElementChild.getBoundingClientRect();
              if (!fold.open || inside.height < 5) { out.push('fold stays shut'); }
              folds++;
            }
            if (document.documentElement.scrollWidth > window.innerWidth) {
              out.push('wider than the window: ' + document.documentElement.scrollWidth);
            }
            out.push('charts ' + document.querySelectorAll('figure svg').length + ', folds ' + folds);
            document.getElementById('probe').textContent = out.join('\\n');
            </script></body>""";

    @TempDir
    private static Path folder;

    private static Optional<Browser> browser;

    @BeforeAll
    static void findBrowser() {
        browser = Browser.find(folder);
    }

    abstract String html();

    private static Browser browser() {
        assumeTrue(browser.isPresent(), "there is no chromium on this machine; .ci/run installs it");
        return browser.get();
    }

    private static Path page(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void opensWithoutErrorAndAsksNobodyForAnything() throws Exception {
        Browser.Visit visit = browser().open(page("report.html", html()), "--dump-dom");
        assertTrue(visit.out().contains("<svg"), "charts");
        assertFalse(visit.messages().contains("CONSOLE"), visit.messages());
        assertEquals(List.of(), browser().asked());
    }

    @Test
    void aRequestToOutsideWouldBeSeen() throws Exception {
        browser().open(page("asking.html", "<!doctype html><img src='https://outside.invalid/a.png'>"), "--dump-dom");
        assertTrue(browser().asked().contains("https://outside.invalid/a.png"), "the log of the network works");
    }

    @Test
    void chartsShowFoldsOpenAndNothingLeavesTheWindow() throws Exception {
        Path page = page("probe.html", html().replace("</body>", PROBE));
        int charts = Jsoup.parse(html()).select("figure svg").size();
        int folds = Jsoup.parse(html()).select("details").size();
        for (String size : List.of("1200,900", "520,900")) {
            Browser.Visit visit = browser().open(page, "--dump-dom", "--window-size=" + size);
            String found =
                    Jsoup.parse(visit.out()).selectFirst("#probe").wholeText().strip();
            assertEquals("charts " + charts + ", folds " + folds, found, size);
        }
    }

    @Test
    void printedChartsStandWholeOnOnePage() throws Exception {
        Path pdf = folder.resolve("print.pdf");
        browser().open(page("print.html", html()), "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        int whole = 0;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                int heads = count(text, "What the bypass valve sees");
                // the line below the legend is the lowest of a chart: with it the chart is not cut off
                int feet = count(text, "Short dashes: opening pressure with its band");
                assertEquals(heads, feet, "page " + page);
                whole += feet;
            }
        }
        assertEquals(3, whole, "one chart a state");
    }

    private static int count(String text, String words) {
        return (int)
                Pattern.compile(Pattern.quote(words)).matcher(text).results().count();
    }
}
